package tightside.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tightside.files.Node.Scalar.Kind;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Makes a tree of located nodes from a YAML text.
 *
 * <p>Of YAML it takes sections, lists and single values. Anchors, aliases and tags are refused
 * where they first stand, so that nothing is ever expanded.
 */
final class TreeReader {

  /** A model needs seven. */
  private static final int DEEPEST = 12;

  /** The text sign by sign, where it may have anchors in it. */
  private final int[] signs;

  private final YAMLParser parser;
  private final Complaints complaints;

  private TreeReader(String text, YAMLParser parser, Complaints complaints) {
    signs = text.indexOf('&') < 0 ? new int[0] : text.codePoints().toArray();
    this.parser = parser;
    this.complaints = complaints;
  }

  /**
   * @throws Unreadable where the text can't be read on
   */
  static Node read(String text, Complaints complaints) throws Unreadable {
    TextSigns.refuseUnprintable(text);
    try (YAMLParser parser =
        (YAMLParser) new YAMLFactory().createParser(ObjectReadContext.empty(), text)) {
      TreeReader reader = new TreeReader(text, parser, complaints);
      try {
        return reader.document();
      } catch (JacksonException e) {
        throw SyntaxFault.of(text, e, reader.here());
      }
    }
  }

  private Node document() throws Unreadable {
    JsonToken first = parser.nextToken();
    if (first == null || first == JsonToken.VALUE_NULL) {
      throw new Unreadable(Place.START, Fault.TEXT_EMPTY, Map.of());
    }
    Node root = node(first, 1);
    if (parser.nextToken() != null) {
      throw new Unreadable(here(), Fault.DOCUMENTS_SEVERAL, Map.of());
    }
    return root;
  }

  private Node node(JsonToken token, int depth) throws Unreadable {
    refuseExtras();
    if (token != JsonToken.START_OBJECT && token != JsonToken.START_ARRAY) {
      return new Node.Scalar(here(), parser.getString(), kind(token));
    }
    if (depth > DEEPEST) {
      throw new Unreadable(here(), Fault.NESTED_TOO_DEEP, Map.of("most", DEEPEST));
    }
    return token == JsonToken.START_OBJECT ? section(depth) : row(depth);
  }

  private Node section(int depth) throws Unreadable {
    Place at = here();
    List<Node.Entry> entries = new ArrayList<>();
    Map<String, Place> met = new HashMap<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      refuseExtras();
      String key = parser.getString();
      Place keyAt = here();
      Node value = node(parser.nextToken(), depth + 1);
      Place first = met.putIfAbsent(key, keyAt);
      if (first == null) {
        entries.add(new Node.Entry(key, keyAt, value));
      } else {
        complaints.add(keyAt, Fault.KEY_TWICE, Map.of("key", key, "line", first.line()));
      }
    }
    return new Node.Section(at, entries);
  }

  private Node row(int depth) throws Unreadable {
    Place at = here();
    List<Node> items = new ArrayList<>();
    JsonToken token = parser.nextToken();
    while (token != JsonToken.END_ARRAY) {
      items.add(node(token, depth + 1));
      token = parser.nextToken();
    }
    return new Node.Row(at, items);
  }

  private void refuseExtras() throws Unreadable {
    if (parser.isCurrentAlias()) {
      throw new Unreadable(here(), Fault.ALIAS_USED, Map.of());
    }
    if (parser.getObjectId() != null || anchored()) {
      throw new Unreadable(here(), Fault.ANCHOR_USED, Map.of());
    }
    if (parser.getTypeId() != null) {
      throw new Unreadable(here(), Fault.TAG_USED, Map.of());
    }
  }

  /** Whether a single value has an anchor before it, of which the parser says nothing. */
  private boolean anchored() {
    long index = parser.currentTokenLocation().getCharOffset();
    return index >= 0 && index < signs.length && signs[(int) index] == '&';
  }

  private static Kind kind(JsonToken token) {
    return switch (token) {
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Kind.NUMBER;
      case VALUE_TRUE, VALUE_FALSE -> Kind.TRUTH;
      case VALUE_NULL -> Kind.NOTHING;
      default -> Kind.TEXT;
    };
  }

  private Place here() {
    TokenStreamLocation at = parser.currentTokenLocation();
    return new Place(Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
  }
}
