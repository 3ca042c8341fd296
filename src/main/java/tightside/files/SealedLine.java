package tightside.files;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import tightside.record.Sha256;

/**
 * A line of a job record: a JSON object whose last member is its seal, the SHA-256 of the seal
 * before it and of the object without it. So a line that was changed shows, and so does one that is
 * missing.
 *
 * @param content the object without its seal, as it stands in the file
 */
record SealedLine(byte[] content, String seal) {

  private static final String BEFORE = ",\"seal\":\"";
  private static final String BEHIND = "\"}";
  private static final int TAIL = BEFORE.length() + Sha256.LETTERS + BEHIND.length();

  /** Seals an object. */
  static SealedLine of(String json, String before) {
    byte[] content = json.getBytes(StandardCharsets.UTF_8);
    return new SealedLine(content, seal(content, before));
  }

  private static String seal(byte[] content, String before) {
    return Sha256.of(before.getBytes(StandardCharsets.US_ASCII), content);
  }

  /** Reads a line; nothing where it has no seal at its end. */
  static Optional<SealedLine> read(byte[] line) {
    if (line.length <= TAIL) {
      return Optional.empty();
    }
    int end = line.length - TAIL;
    String tail = new String(line, end, TAIL, StandardCharsets.ISO_8859_1);
    String seal = tail.substring(BEFORE.length(), TAIL - BEHIND.length());
    if (!tail.equals(BEFORE + seal + BEHIND)) {
      return Optional.empty();
    }
    byte[] content = Arrays.copyOf(line, end + 1);
    content[end] = '}';
    return Optional.of(new SealedLine(content, seal));
  }

  String json() {
    return new String(content, StandardCharsets.UTF_8);
  }

  /** The line as it stands in a file, with its end. */
  byte[] bytes() {
    ByteArrayOutputStream line = new ByteArrayOutputStream(content.length + TAIL);
    line.write(content, 0, content.length - 1);
    line.writeBytes((BEFORE + seal + BEHIND + "\n").getBytes(StandardCharsets.ISO_8859_1));
    return line.toByteArray();
  }

  /** The seal that belongs to the content. */
  String due(String before) {
    return seal(content, before);
  }

  /** Whether the seal fits the content behind one of several lines. */
  boolean follows(List<String> before) {
    return before.stream().anyMatch(seal -> due(seal).equals(this.seal));
  }
}
