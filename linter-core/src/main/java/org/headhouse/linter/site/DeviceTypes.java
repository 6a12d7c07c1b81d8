package org.headhouse.linter.site;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;

/** The types of device that a repository knows. */
public final class DeviceTypes {
  /** No file of device types. */
  public static final DeviceTypes NONE = new DeviceTypes(null, List.of(), true);

  private final @Nullable SourceText source;
  private final Map<String, DeviceType> byId = new LinkedHashMap<>();
  private final boolean complete;

  /**
   * @param source the file, or null where there is none
   * @param types in the order of the file; of two with one id, the first counts
   * @param complete whether every type of the file is understood
   */
  public DeviceTypes(@Nullable SourceText source, List<DeviceType> types, boolean complete) {
    this.source = source;
    this.complete = complete;
    for (DeviceType type : types) {
      type.id().optional().ifPresent(id -> byId.putIfAbsent(id, type));
    }
  }

  /** The file, or null where there is none. */
  public @Nullable SourceText source() {
    return source;
  }

  /** The type with an id; {@link DeviceType#UNKNOWN} where there is none. */
  public DeviceType get(@Nullable String id) {
    DeviceType type = id == null ? null : byId.get(id);
    return type == null ? DeviceType.UNKNOWN : type;
  }

  /** The ids that are known. */
  public Set<String> ids() {
    return Collections.unmodifiableSet(byId.keySet());
  }

  /** Whether a type that is not here is unknown, and not only not understood. */
  public boolean isComplete() {
    return complete;
  }
}
