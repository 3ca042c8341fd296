package tightside.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Takes the text out of a file. */
final class FileText {

  /** A model has some KiB. */
  static final int LARGEST = 1 << 20;

  private FileText() {}

  /**
   * @throws Unreadable if there is no such file, or no text in it
   */
  static String of(Path file) throws Unreadable {
    return trimmed(exact(file));
  }

  /**
   * The same, sign by sign.
   *
   * @throws Unreadable if there is no such file, or no text in it
   */
  static String exact(Path file) throws Unreadable {
    Map<String, Object> path = Map.of("path", file.toString());
    if (!Files.exists(file)) {
      throw new Unreadable(Place.START, Fault.FILE_MISSING, path);
    }
    if (!Files.isRegularFile(file)) {
      throw new Unreadable(Place.START, Fault.FILE_NOT_PLAIN, path);
    }
    try {
      return text(bytes(file));
    } catch (IOException e) {
      throw new Unreadable(Place.START, Fault.FILE_CLOSED, path);
    }
  }

  /** A text without a byte order mark. */
  static String trimmed(String text) throws Unreadable {
    if (text.length() > LARGEST) {
      throw tooLarge();
    }
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static byte[] bytes(Path file) throws IOException, Unreadable {
    try (var in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST + 1);
      if (bytes.length > LARGEST) {
        throw tooLarge();
      }
      return bytes;
    }
  }

  private static Unreadable tooLarge() {
    return new Unreadable(Place.START, Fault.FILE_TOO_LARGE, Map.of("kib", LARGEST / 1024));
  }

  private static String text(byte[] bytes) throws Unreadable {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer text = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), text, true);
    String decoded = text.flip().toString();
    if (result.isError()) {
      throw new Unreadable(Place.of(decoded, decoded.length()), Fault.FILE_NOT_UTF8, Map.of());
    }
    return decoded;
  }
}
