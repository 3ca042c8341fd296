package tightside.session;

import tightside.drive.Guide;
import tightside.drive.RouteEntry;
import tightside.drive.Sprocket;

/** What a part on a chain's route is. */
public enum PartKind {
  SPROCKET("sprocket"),
  GUIDE("guide"),
  ARM("arm"),
  SHOE("shoe");

  private final String word;

  PartKind(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  public static PartKind of(RouteEntry entry) {
    return entry instanceof Sprocket
        ? SPROCKET
        : entry instanceof Guide ? GUIDE : entry instanceof tightside.drive.Arm ? ARM : SHOE;
  }

  Faces.Kind face() {
    return Faces.Kind.valueOf(name());
  }
}
