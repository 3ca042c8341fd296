package tightside.drive;

/** How a chain meets its sprockets. */
public enum ChainKind {
  ROLLER,
  BUSH,
  TOOTHED
}
