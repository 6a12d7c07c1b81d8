package org.headhouse.linter.markup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** What is written is read back by the parser of the JDK. */
class XmlWriterTest {

  private static Element read(String xml) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(xml)))
        .getDocumentElement();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plain",
        "<script>alert('1')</script>",
        "]]> & &amp; --> \"quoted\"",
        "line\nbreak\ttab\rreturn",
        "ñ 漢 \uD83C\uDF31 \u202E",
        ""
      })
  void anyTextComesBack(String text) throws Exception {
    String xml = new XmlWriter().element("a", text, "b", text).finish();
    assertThat(read(xml).getTextContent()).isEqualTo(text);
    assertThat(read(xml).getAttribute("b")).isEqualTo(text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u0000", "\u001B", "\uFFFE", "\uD800"})
  void whatXmlCannotHoldIsReplaced(String text) throws Exception {
    String xml = new XmlWriter().element("a", text, "b", text).finish();
    assertThat(read(xml).getTextContent()).isEqualTo("\uFFFD");
    assertThat(read(xml).getAttribute("b")).isEqualTo("\uFFFD");
  }

  @Test
  void elementsStandInEachOther() {
    XmlWriter xml = new XmlWriter().start("a", "x", "1").empty("b").newLine();
    assertThat(xml.element("c", "t").end().finish()).isEqualTo("<a x=\"1\"><b/>\n<c>t</c></a>");
  }

  @Test
  void whatIsNotEndedIsTold() {
    XmlWriter xml = new XmlWriter().start("a");
    assertThatThrownBy(xml::finish)
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("a");
    assertThatThrownBy(() -> xml.empty("b", "x")).isInstanceOf(IllegalArgumentException.class);
  }
}
