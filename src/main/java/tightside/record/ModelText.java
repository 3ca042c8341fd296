package tightside.record;

/**
 * The model that a job was done with, whole.
 *
 * @param name as a person would call it: the file's name
 * @param place the file's full path on the computer of the day; empty where there was no file
 * @param text all of the file, sign by sign
 * @param sha256 of the text as UTF-8, as it was when the job began
 */
public record ModelText(String name, String place, String text, String sha256) {

  public static ModelText of(String name, String place, String text) {
    return new ModelText(name, place, text, Sha256.of(text));
  }

  /** Whether the text is still the one that was put down. */
  public boolean intact() {
    return Sha256.of(text).equals(sha256);
  }
}
