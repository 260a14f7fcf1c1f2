package stirtide.demo.print;

import java.io.StringWriter;
import java.util.regex.Pattern;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** Writes elements of an HTML page that is well-formed XML too. Every text and attribute is escaped. */
final class HtmlWriter {
    private static final Pattern NOT_XML =
            Pattern.compile("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

    private final StringWriter page = new StringWriter();
    private final XMLStreamWriter xml;

    /** An empty page. */
    HtmlWriter() {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(page);
            xml.writeDTD("<!DOCTYPE html>\n");
        } catch (XMLStreamException failed) {
            throw cannotHappen(failed);
        }
    }

    /** Opens an element with attributes given as name, value, name, value. */
    HtmlWriter open(String element, String... attributes) {
        return written(() -> {
            xml.writeStartElement(element);
            attributes(attributes);
        });
    }

    /** Writes an element that has no content and no end in HTML. */
    HtmlWriter empty(String element, String... attributes) {
        return written(() -> {
            xml.writeEmptyElement(element);
            attributes(attributes);
        });
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) xml.writeAttribute(attributes[i], legal(attributes[i + 1]));
    }

    /** Writes text. */
    HtmlWriter text(String text) {
        return written(() -> xml.writeCharacters(legal(text)));
    }

    /** Closes the innermost open element. */
    HtmlWriter close() {
        return written(() -> {
            // An empty text first: an element without content would otherwise be free to be written as <td/>.
            xml.writeCharacters("");
            xml.writeEndElement();
        });
    }

    /** Closes the innermost open element and begins a new line. */
    HtmlWriter closeLine() {
        return close().text("\n");
    }

    /** Writes a whole element with text and attributes. */
    HtmlWriter element(String element, String text, String... attributes) {
        return open(element, attributes).text(text).close();
    }

    /** The page so far. */
    String page() {
        written(xml::flush);
        return page.toString();
    }

    private interface Writing {
        void run() throws XMLStreamException;
    }

    private HtmlWriter written(Writing writing) {
        try {
            writing.run();
            return this;
        } catch (XMLStreamException failed) {
            throw cannotHappen(failed);
        }
    }

    private static String legal(String text) {
        return NOT_XML.matcher(text).replaceAll("\uFFFD");
    }

    private static IllegalStateException cannotHappen(XMLStreamException failed) {
        return new IllegalStateException("a page in memory can always be written", failed);
    }
}
