package tightside.files;

import java.util.Optional;

/** What could be made of a file: a model, or parts of one that make no drive yet, or nothing. */
record Decoded(Optional<Model> model, Optional<Unfinished> unfinished) {

  static Decoded nothing() {
    return new Decoded(Optional.empty(), Optional.empty());
  }
}
