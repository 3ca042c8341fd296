package tightside.validation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.AnnotationBasedArgumentsProvider;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsSource;
import org.junit.jupiter.params.support.ParameterDeclarations;

/** Runs a parameterized test once for each row of a table in the folder {@code validation}. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ArgumentsSource(Rows.Provider.class)
public @interface Rows {

  /** The table, such as {@code published/f4.csv}. */
  String value();

  /** Reads the table. */
  class Provider extends AnnotationBasedArgumentsProvider<Rows> {
    @Override
    protected Stream<? extends Arguments> provideArguments(
        ParameterDeclarations parameters, ExtensionContext context, Rows rows) {
      return Row.of(rows.value()).stream().map(Arguments::of);
    }
  }
}
