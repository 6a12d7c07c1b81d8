package org.headhouse.linter.draft;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.site.DeviceType;

/** What is not known of the devices on a list, though the line depends on it. */
final class TypeQuestions {
  private TypeQuestions() {}

  /** Each as a clause, in the order of the list. */
  static List<String> of(List<ListedItem> items, int mostShown) {
    Map<String, DeviceType> types = new LinkedHashMap<>();
    for (ListedItem item : items) {
      String type = item.value(Column.TYPE);
      if (type != null) {
        types.putIfAbsent(YamlScalar.of(type), item.type());
      }
    }
    List<String> questions =
        new ArrayList<>(
            types.entrySet().stream()
                .filter(type -> !lacking(type.getValue()).isEmpty())
                .map(
                    type ->
                        "device-types.yaml does not say of "
                            + type.getKey()
                            + ": "
                            + lacking(type.getValue()))
                .toList());
    List<String> untyped =
        items.stream()
            .filter(item -> item.isUnit() && item.value(Column.TYPE) == null)
            .map(ListedItem::name)
            .toList();
    if (!untyped.isEmpty()) {
      questions.add(
          "device-type of "
              + untyped.stream().limit(mostShown).map(YamlScalar::of).collect(joining(", "))
              + (untyped.size() > mostShown ? ", …" : "")
              + "; idle-bias and isolated of that type");
    }
    return questions;
  }

  private static String lacking(DeviceType type) {
    String idleBias = type.idleBias().isMissing() ? "idle-bias (needed or not-needed)" : "";
    String isolated = type.isolated().isMissing() ? "isolated (true or false)" : "";
    return idleBias.isEmpty() || isolated.isEmpty()
        ? idleBias + isolated
        : idleBias + ", " + isolated;
  }
}
