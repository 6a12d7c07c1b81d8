package org.headhouse.linter.fix;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;

/**
 * Writes maps and lists as YAML in a random mixture of styles: block and flow, quotes, comments,
 * anchors, empty lines, both line ends, with and without a byte order mark.
 */
final class SiteWriter {
  private final RandomGenerator random;
  private final StringBuilder text = new StringBuilder();
  private final Map<Object, String> anchors = new HashMap<>();
  private final boolean comments;
  private final boolean aliases;
  private final int flow;

  SiteWriter(RandomGenerator random) {
    this.random = random;
    this.comments = random.nextBoolean();
    this.aliases = random.nextInt(3) == 0;
    this.flow = random.nextInt(4);
  }

  byte[] write(Map<String, Object> site) {
    if (random.nextInt(4) == 0) {
      text.append("--- \n");
    }
    entries(site, 0, false);
    String written = text.toString();
    if (random.nextInt(4) == 0) {
      written = written.stripTrailing();
    }
    if (random.nextInt(3) == 0) {
      written = written.replace("\n", "\r\n");
    }
    return ((random.nextInt(4) == 0 ? "\uFEFF" : "") + written).getBytes(UTF_8);
  }

  private void entries(Map<?, ?> map, int indentation, boolean firstOnLine) {
    boolean first = firstOnLine;
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      if (!first) {
        comment(indentation);
        text.append(" ".repeat(indentation));
      }
      first = false;
      text.append(entry.getKey()).append(':');
      value(entry.getValue(), indentation);
    }
  }

  private void comment(int indentation) {
    if (comments && random.nextInt(12) == 0) {
      text.append(" ".repeat(indentation)).append("# keep, \"this\": too\n");
    }
    if (random.nextInt(20) == 0) {
      text.append("\n");
    }
  }

  private void endOfLine() {
    if (comments && random.nextInt(8) == 0) {
      text.append("  # so agreed, on site");
    }
    text.append('\n');
  }

  private void value(Object value, int indentation) {
    String alias = alias(value);
    if (alias.startsWith("*")) {
      text.append(' ').append(alias);
      endOfLine();
    } else if (value instanceof String scalar) {
      text.append(' ').append(alias).append(quoted(scalar));
      endOfLine();
    } else if (isEmpty(value) || (isSmall(value) && random.nextInt(4) >= flow)) {
      text.append(' ').append(alias).append(flow(value, indentation));
      endOfLine();
    } else {
      text.append(alias.isEmpty() ? "" : " " + alias.strip());
      endOfLine();
      block(value, indentation + (value instanceof List<?> ? 2 * random.nextInt(2) : 2));
    }
  }

  /** An alias where the same was written before, an anchor where it may be used later. */
  private String alias(Object value) {
    boolean shareable = !(value instanceof String scalar) || scalar.equals("none");
    if (!aliases || !shareable || !isSmall(value) || isEmpty(value)) {
      return "";
    }
    String known = anchors.get(value);
    if (known != null) {
      return random.nextInt(3) > 0 ? "*" + known : "";
    }
    if (random.nextInt(3) == 0) {
      return "";
    }
    String name = "a" + anchors.size();
    anchors.put(value, name);
    return "&" + name + " ";
  }

  private static boolean isEmpty(Object value) {
    return value instanceof List<?> list
        ? list.isEmpty()
        : value instanceof Map<?, ?> map && map.isEmpty();
  }

  private static boolean isSmall(Object value) {
    if (value instanceof List<?> list) {
      return list.stream().allMatch(String.class::isInstance);
    }
    return !(value instanceof Map<?, ?> map)
        || map.values().stream().allMatch(String.class::isInstance);
  }

  private void block(Object value, int indentation) {
    if (value instanceof Map<?, ?> map) {
      entries(map, indentation, false);
      return;
    }
    for (Object item : (List<?>) value) {
      comment(indentation);
      text.append(" ".repeat(indentation)).append("-");
      if (item instanceof Map<?, ?> map && random.nextInt(5) > 0) {
        String gap = " ".repeat(1 + random.nextInt(2));
        text.append(gap);
        entries(map, indentation + 1 + gap.length(), true);
      } else {
        text.append(' ')
            .append(item instanceof String scalar ? quoted(scalar) : flow(item, indentation));
        endOfLine();
      }
    }
  }

  private String flow(Object value, int indentation) {
    if (value instanceof String scalar) {
      return quoted(scalar);
    }
    boolean lines = random.nextInt(6) == 0;
    String space = random.nextInt(4) == 0 ? " " : "";
    String between = lines ? ",\n" + " ".repeat(indentation + 4) : ", ";
    if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(entry -> entry.getKey() + ": " + flow(entry.getValue(), indentation))
          .collect(Collectors.joining(between, "{" + space, space + "}"));
    }
    String comma = random.nextInt(8) == 0 && !isEmpty(value) ? "," : "";
    return ((List<?>) value)
        .stream()
            .map(item -> flow(item, indentation))
            .collect(Collectors.joining(between, "[" + space, comma + space + "]"));
  }

  /** As it is, or in quotes where that makes no difference. */
  private String quoted(String scalar) {
    boolean isText = scalar.matches("[A-Za-z][a-z-]+( [0-9]+)?|[0-9]+ (ohm|m|AWG|V)");
    boolean isWord = scalar.matches("(?i)yes|no|on|off|true|false");
    return switch (isText && !isWord ? random.nextInt(10) : 9) {
      case 0 -> "\"" + scalar + "\"";
      case 1 -> "'" + scalar + "'";
      default -> scalar;
    };
  }
}
