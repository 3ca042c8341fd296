package tightside.record;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The digest SHA-256 (FIPS 180-4, Secure Hash Standard, August 2015, section 6.2). */
public final class Sha256 {

  /** Letters of a digest in hexadecimal. */
  public static final int LETTERS = 64;

  private Sha256() {}

  /** Of bytes one after the other, in 64 small hexadecimal letters. */
  public static String of(byte[]... parts) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (byte[] part : parts) {
        digest.update(part);
      }
      return HexFormat.of().formatHex(digest.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** Of a text as UTF-8. */
  public static String of(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }
}
