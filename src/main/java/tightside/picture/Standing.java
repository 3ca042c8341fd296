package tightside.picture;

import java.util.List;
import java.util.Map;

/**
 * What of a picture stays as it is while the crank turns and nothing else happens.
 *
 * @param faces what rubs each chain, by its name: guides, arms and shoes
 */
public record Standing(Bounds bounds, double lineMm, Map<String, List<Shape>> faces) {}
