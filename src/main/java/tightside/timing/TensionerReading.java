package tightside.timing;

import java.util.OptionalLong;
import tightside.drive.Seen;

/**
 * Where a tensioner stands.
 *
 * @param extensionMm how far the plunger is out; its full travel where it has run out
 * @param steps whole ratchet steps; nothing without a ratchet
 * @param taut whether it keeps the chain tight
 * @param slackLeftMm chain that is over
 * @param seen what it takes to see the plunger
 */
public record TensionerReading(
    String name,
    double extensionMm,
    double travelMm,
    OptionalLong steps,
    boolean taut,
    double slackLeftMm,
    Seen seen) {}
