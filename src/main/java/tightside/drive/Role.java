package tightside.drive;

/** What a shaft is for. */
public enum Role {
  CRANKSHAFT,
  CAMSHAFT,
  IDLER,
  BALANCER,
  PUMP
}
