package tightside.record;

import java.time.Instant;

/**
 * How a job began.
 *
 * @param by the program that wrote the record, with its version
 */
public record Head(Instant begun, String by, ModelText model) {}
