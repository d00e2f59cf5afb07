package dev.dogleg.address;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Hands the elements of OSM XML to a sink; documents with a DTD or outer entities are refused. */
final class XmlElements {
  private final OsmSink sink;
  private char kind;
  private long id;
  private double lat;
  private double lon;
  private Map<String, String> tags = new HashMap<>();
  private List<Long> nodes = new ArrayList<>();
  private List<OsmSink.Member> members = new ArrayList<>();

  XmlElements(OsmSink sink) {
    this.sink = sink;
  }

  void read(InputStream in) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    XMLStreamReader reader = factory.createXMLStreamReader(in);
    boolean rootSeen = false;
    while (reader.hasNext()) {
      int event = reader.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        if (!rootSeen && !reader.getLocalName().equals("osm")) {
          throw new XMLStreamException("root element is " + reader.getLocalName() + ", not osm");
        }
        rootSeen = true;
        start(reader);
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        end(reader.getLocalName());
      }
    }
  }

  private void start(XMLStreamReader reader) {
    switch (reader.getLocalName()) {
      case "node" -> {
        begin('n', reader);
        lat = Double.parseDouble(attribute(reader, "lat"));
        lon = Double.parseDouble(attribute(reader, "lon"));
      }
      case "way" -> begin('w', reader);
      case "relation" -> begin('r', reader);
      case "tag" -> {
        if (kind != 0) {
          tags.put(attribute(reader, "k"), attribute(reader, "v"));
        }
      }
      case "nd" -> nodes.add(Long.parseLong(attribute(reader, "ref")));
      case "member" -> {
        String type = attribute(reader, "type");
        String role = reader.getAttributeValue(null, "role");
        members.add(
            new OsmSink.Member(
                type.charAt(0),
                Long.parseLong(attribute(reader, "ref")),
                role == null ? "" : role));
      }
      default -> {
        // Bounds and the like.
      }
    }
  }

  private void begin(char newKind, XMLStreamReader reader) {
    kind = newKind;
    id = Long.parseLong(attribute(reader, "id"));
    tags = new HashMap<>();
    nodes = new ArrayList<>();
    members = new ArrayList<>();
  }

  private void end(String name) {
    switch (name) {
      case "node" -> {
        if (sink.wantsNodes()) {
          sink.node(id, lat, lon, tags);
        }
        kind = 0;
      }
      case "way" -> {
        if (sink.wantsWays()) {
          sink.way(id, nodes.stream().mapToLong(Long::longValue).toArray(), tags);
        }
        kind = 0;
      }
      case "relation" -> {
        if (sink.wantsRelations()) {
          sink.relation(id, members, tags);
        }
        kind = 0;
      }
      default -> {
        // Their parts were taken when they began.
      }
    }
  }

  private static String attribute(XMLStreamReader reader, String name) {
    String value = reader.getAttributeValue(null, name);
    if (value == null || value.isEmpty()) {
      throw new IllegalStateException(
          "<"
              + reader.getLocalName()
              + "> without "
              + name
              + ", line "
              + reader.getLocation().getLineNumber());
    }
    return value;
  }
}
