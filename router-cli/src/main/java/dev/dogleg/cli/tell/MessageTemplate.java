package dev.dogleg.cli.tell;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.MustacheException;
import com.samskivert.mustache.Template;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A message in one language: text and fields, nothing else. */
final class MessageTemplate {
  private static final Mustache.Compiler COMPILER = Mustache.compiler().escapeHTML(false);

  private final Template template;

  private MessageTemplate(Template template) {
    this.template = template;
  }

  /** What is wrong with a template: a fault's code and what was expected. */
  record Wrong(String code, String expected) {}

  /** {@return what is wrong with a template, nothing where it can be used} */
  static List<Wrong> wrong(String text, List<String> allowed) {
    List<Wrong> wrong = new ArrayList<>();
    if (!text.matches("(?s)\\p{L}.*")) {
      // So no message can begin like a formula, whatever a name begins with.
      wrong.add(new Wrong("template-start", "a template that begins with a letter was expected"));
    }
    try {
      COMPILER
          .compile(text)
          .visit(
              new Mustache.Visitor() {
                @Override
                public void visitText(String plain) {
                  if (plain.contains("{{") || plain.contains("}}")) {
                    add("bad-template", "closed fields like {{client}}");
                  }
                }

                @Override
                public void visitVariable(String name) {
                  if (!allowed.contains(name)) {
                    add("unknown-field", "one of " + String.join(", ", allowed));
                  }
                }

                @Override
                public boolean visitInclude(String name) {
                  return section();
                }

                @Override
                public boolean visitParent(String name) {
                  return section();
                }

                @Override
                public boolean visitBlock(String name) {
                  return section();
                }

                @Override
                public boolean visitSection(String name) {
                  return section();
                }

                @Override
                public boolean visitInvertedSection(String name) {
                  return section();
                }

                private boolean section() {
                  add("bad-template", "text and fields like {{client}}, no sections");
                  return false;
                }

                private void add(String code, String expected) {
                  wrong.add(new Wrong(code, expected + " was expected"));
                }
              });
    } catch (MustacheException bad) {
      wrong.add(
          new Wrong("bad-template", "fields like {{client}} were expected: " + bad.getMessage()));
    }
    return wrong;
  }

  /** A template in which nothing is wrong. */
  static MessageTemplate of(String text) {
    return new MessageTemplate(COMPILER.compile(text));
  }

  /** The message: marks made plain, on one line. */
  String message(EnumMap<Field, String> values) {
    Map<String, String> byWord = new HashMap<>();
    values.forEach((field, value) -> byWord.put(field.word(), value));
    return PlainMarks.of(template.execute(byWord));
  }
}
