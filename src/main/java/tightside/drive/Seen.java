package tightside.drive;

/** What it takes for a person to see a mark, a plunger or a strand. */
public enum Seen {
  COVER_ON,
  COVER_OFF,
  BORESCOPE,
  NEVER
}
