package tightside.files;

import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;

/** Tells what is wrong with a text that is not YAML, from what the parser stumbled over. */
final class SyntaxFault {

  private SyntaxFault() {}

  /**
   * @param last where the last thing stood that could be read
   */
  static Unreadable of(String text, JacksonException e, Place last) {
    if (e.getCause() instanceof MarkedYamlEngineException marked) {
      return of(text, marked);
    }
    return switch (signAt(text, last)) {
      case "*" -> new Unreadable(last, Fault.ALIAS_USED, Map.of());
      case "!" -> new Unreadable(last, Fault.TAG_USED, Map.of());
      case "[", "{" -> new Unreadable(last, Fault.KEY_NOT_TEXT, Map.of());
      default -> new Unreadable(last, Fault.YAML_BROKEN, Map.of());
    };
  }

  private static Unreadable of(String text, MarkedYamlEngineException e) {
    String problem = Optional.ofNullable(e.getProblem()).orElse("");
    String context = Optional.ofNullable(e.getContext()).orElse("");
    Place at = place(e.getProblemMark()).orElse(Place.START);
    Place opened = place(e.getContextMark()).orElse(at);
    Map<String, Object> line = Map.of("line", at.line());
    if (context.contains("quoted scalar") && problem.contains("end of stream")) {
      return new Unreadable(opened, Fault.QUOTE_OPEN, Map.of());
    }
    if (problem.contains("escape") || problem.contains("hexadecimal")) {
      return new Unreadable(at, Fault.ESCAPE_UNKNOWN, Map.of());
    }
    if (context.contains("flow sequence") || context.contains("flow mapping")) {
      return opened.line() == at.line()
          ? new Unreadable(at, Fault.BRACKET_BROKEN, Map.of())
          : new Unreadable(opened, Fault.BRACKET_OPEN, line);
    }
    if (context.contains("simple key")) {
      return new Unreadable(opened, Fault.COLON_MISSING, Map.of());
    }
    return atSign(text, problem, at);
  }

  private static Unreadable atSign(String text, String problem, Place at) {
    String sign = signAt(text, at);
    if (problem.contains("cannot start any token")) {
      return sign.equals("\t")
          ? new Unreadable(at, Fault.TAB_INDENT, Map.of())
          : new Unreadable(at, Fault.SIGN_ASTRAY, Map.of("sign", sign));
    }
    if (problem.contains("mapping values are not allowed")) {
      return new Unreadable(at, Fault.COLON_ASTRAY, Map.of());
    }
    if (problem.contains("sequence entries are not allowed")) {
      return new Unreadable(at, Fault.ITEM_ASTRAY, Map.of());
    }
    if (problem.contains("expected <block end>")) {
      return new Unreadable(at, Fault.LINE_ASTRAY, Map.of());
    }
    return new Unreadable(at, Fault.YAML_BROKEN, Map.of());
  }

  private static Optional<Place> place(Optional<Mark> mark) {
    return mark.map(m -> new Place(m.getLine() + 1, m.getColumn() + 1));
  }

  private static String signAt(String text, Place at) {
    String[] lines = text.split("\r\n|\r|\n", -1);
    String line = at.line() <= lines.length ? lines[at.line() - 1] : "";
    int[] signs = line.codePoints().toArray();
    return at.column() <= signs.length ? Character.toString(signs[at.column() - 1]) : "";
  }
}
