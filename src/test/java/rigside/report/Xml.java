package rigside.report;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Reads XML with the reader of the JDK, which then fetches and expands nothing. */
final class Xml {
    private Xml() {}

    /**
     * @throws AssertionError if it is not well formed
     */
    static Document read(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(text)));
        } catch (SAXException e) {
            throw new AssertionError(e.getMessage() + "\n" + text, e);
        } catch (IOException | ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }
}
