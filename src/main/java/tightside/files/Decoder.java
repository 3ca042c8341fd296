package tightside.files;

import java.util.Optional;

/**
 * Makes something of a value.
 *
 * <p>What can't be made is nothing, and the value's complaints say why.
 */
@FunctionalInterface
interface Decoder<T> {

  Optional<T> decode(Value value);
}
