package tightside.picture;

import java.util.List;
import java.util.Map;

/**
 * A picture, and what of it stays as it is while the crank turns and nothing else happens.
 *
 * @param picture of the drive where it stood
 * @param faces what rubs each chain, by its name: guides, arms and shoes
 */
public record Standing(Picture picture, Map<String, List<Shape>> faces) {}
