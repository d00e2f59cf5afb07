package dev.dogleg.address;

import java.util.Set;

/**
 * A street as it may be read from some of the typed words.
 *
 * @param from first word
 * @param to word after the last
 * @param field field of the index its keys belong to
 * @param keys keys
 * @param errors typing errors assumed, 0 where the words are taken as they are
 */
record StreetSpan(int from, int to, String field, Set<String> keys, int errors) {

  boolean contains(StreetSpan other) {
    return from <= other.from && other.to <= to && to - from > other.to - other.from;
  }

  boolean asTyped() {
    return errors == 0 && !field.equals(Fields.CORE);
  }
}
