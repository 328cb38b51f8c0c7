// Validates PDF files with the veraPDF engine, as it comes inside the jar on the class path.
//
//     java -cp JAR tests/outside/Validate.java 2a,ua1 FILE.pdf...
//
// The first argument names the profiles: PDF/A by part and level (`2a`), PDF/UA by part (`ua1`). Each file is held
// against each profile; every broken rule is told once, with how often it is broken. Exit code 1: something failed.

import java.io.File;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Date;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.logging.LogManager;
import javax.xml.parsers.DocumentBuilderFactory;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import org.verapdf.pdfa.validation.profiles.ErrorArgument;
import org.verapdf.pdfa.validation.profiles.ErrorArgumentImpl;
import org.verapdf.pdfa.validation.profiles.Profiles;
import org.verapdf.pdfa.validation.profiles.Rule;
import org.verapdf.pdfa.validation.profiles.RuleId;
import org.verapdf.pdfa.validation.profiles.ValidationProfile;
import org.verapdf.pdfa.validation.profiles.Variable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

public class Validate {
    public static void main(String[] args) throws Exception {
        LogManager.getLogManager().reset();
        VeraGreenfieldFoundryProvider.initialise();
        int passed = 0;
        int failed = 0;
        for (String name : args[0].split(",")) {
            PDFAFlavour flavour = PDFAFlavour.byFlavourId(name);
            ValidationProfile profile = profile(flavour);
            for (int i = 1; i < args.length; i++) {
                if (validate(new File(args[i]), name, flavour, profile)) {
                    passed++;
                } else {
                    failed++;
                }
            }
        }
        System.out.println(passed + " passed, " + failed + " failed");
        if (failed > 0 || passed == 0) {
            System.exit(1);
        }
    }

    /** Holds one file against one profile and tells what it found. */
    static boolean validate(File file, String name, PDFAFlavour flavour, ValidationProfile profile) throws Exception {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(file, flavour);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(profile, false)) {
            ValidationResult result = validator.validate(parser);
            String verdict = result.isCompliant() ? "PASS" : "FAIL";
            System.out.printf("%s %s %s rules=%d checks=%d%n", verdict, name, file, profile.getRules().size(),
                    result.getTotalAssertions());
            broken(result).forEach((rule, count) -> System.out.println("   " + count + "x " + rule));
            return result.isCompliant();
        }
    }

    /** The broken rules in the order of their clauses, each with how often it is broken. */
    static Map<String, Integer> broken(ValidationResult result) {
        Map<String, Integer> counts = new TreeMap<>();
        for (TestAssertion assertion : result.getTestAssertions()) {
            if (assertion.getStatus() == TestAssertion.Status.FAILED) {
                RuleId rule = assertion.getRuleId();
                String text = rule.getClause() + "-" + rule.getTestNumber() + " " + assertion.getMessage() + " @ "
                        + assertion.getLocation().getContext();
                counts.merge(text, 1, Integer::sum);
            }
        }
        return counts;
    }

    /** Reads a profile from the jar. The jar has no JAXB runtime, so its own reader of profiles does not work. */
    static ValidationProfile profile(PDFAFlavour flavour) throws Exception {
        String id = flavour.getId();
        String file = id.startsWith("ua") ? "PDFUA-" + id.substring(2) : "PDFA-" + id.toUpperCase();
        Document document;
        try (InputStream in = Validate.class.getResourceAsStream("/org/verapdf/pdfa/validation/" + file + ".xml")) {
            document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
        }
        Set<Rule> rules = new LinkedHashSet<>();
        for (Element rule : elements(document.getDocumentElement(), "rule")) {
            rules.add(rule(rule));
        }
        Set<Variable> variables = new LinkedHashSet<>();
        for (Element variable : elements(document.getDocumentElement(), "variable")) {
            variables.add(Profiles.variableFromValues(variable.getAttribute("name"), variable.getAttribute("object"),
                    text(variable, "defaultValue"), text(variable, "value")));
        }
        return Profiles.profileFromValues(flavour, Profiles.profileDetailsFromValues(id, id, "", new Date(0)), "",
                rules, variables);
    }

    static Rule rule(Element rule) {
        Element id = elements(rule, "id").get(0);
        List<ErrorArgument> arguments = new ArrayList<>();
        for (Element argument : elements(rule, "argument")) {
            String name = argument.hasAttribute("name") ? argument.getAttribute("name") : null;
            arguments.add(ErrorArgumentImpl.fromValues(argument.getTextContent(), name, null));
        }
        RuleId ruleId = Profiles.ruleIdFromValues(
                PDFAFlavour.Specification.valueOf(id.getAttribute("specification")), id.getAttribute("clause"),
                Integer.parseInt(id.getAttribute("testNumber")));
        Boolean deferred = rule.hasAttribute("deferred") ? Boolean.valueOf(rule.getAttribute("deferred")) : null;
        return Profiles.ruleFromValues(ruleId, rule.getAttribute("object"), deferred, rule.getAttribute("tags"),
                text(rule, "description"), text(rule, "test"), Profiles.errorFromValues(text(rule, "message"), arguments),
                List.of());
    }

    static List<Element> elements(Element parent, String name) {
        NodeList nodes = parent.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    static String text(Element parent, String name) {
        return elements(parent, name).get(0).getTextContent();
    }
}
