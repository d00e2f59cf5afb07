package dev.dogleg.sampletown.osm;

import com.google.protobuf.ByteString;
import java.util.LinkedHashMap;
import java.util.Map;
import org.openstreetmap.osmosis.osmbinary.Osmformat;

/** The string table of one block: strings are numbered from one as they come, zero is empty. */
final class StringPool {
  private final Map<String, Integer> numbers = new LinkedHashMap<>();

  StringPool() {
    numbers.put("", 0);
  }

  int number(String text) {
    return numbers.computeIfAbsent(text, key -> numbers.size());
  }

  Osmformat.StringTable table() {
    Osmformat.StringTable.Builder table = Osmformat.StringTable.newBuilder();
    numbers.keySet().forEach(text -> table.addS(ByteString.copyFromUtf8(text)));
    return table.build();
  }
}
