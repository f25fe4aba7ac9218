package leafturn.records.shape;

import org.jspecify.annotations.Nullable;

/**
 * An outline as a map file gives it.
 *
 * @param name what the file calls it, or null
 * @param outline with its anchor
 */
public record NamedOutline(@Nullable String name, Outline outline) {}
