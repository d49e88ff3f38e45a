package curbwatt.engine.check;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * The packages of a module, lowest first, and which of them each may use.
 *
 * <p>Written as one row a line, {@code name: name name}; {@code *} stands for every row above. A row may use rows above
 * it and no others, so a plan cannot hold a cycle. The module's root package has no row: it stays an empty manual.
 *
 * @param root package under which the rows lie
 * @param libraries packages outside the module that every row may use, in ArchUnit's notation
 * @param rows package to the packages it may use, both without the root
 */
public record Plan(String root, List<String> libraries, Map<String, List<String>> rows) {

    /**
     * Reads a plan.
     *
     * @throws IllegalArgumentException if a row is named twice, or uses one that is not above it
     */
    public static Plan of(String root, List<String> libraries, String text) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        for (String line : text.strip().split("\\s*\\R\\s*")) {
            String[] halves = line.split("\\s*:\\s*", 2);
            List<String> uses =
                    halves.length == 1 || halves[1].isBlank() ? List.of() : List.of(halves[1].split("\\s+"));
            if (uses.equals(List.of("*"))) {
                uses = List.copyOf(rows.keySet());
            }
            if (!rows.keySet().containsAll(uses)) {
                throw new IllegalArgumentException("plan row \"" + line + "\" uses a package that is not above it");
            }
            if (rows.put(halves[0], uses) != null) {
                throw new IllegalArgumentException("plan has two rows named " + halves[0]);
            }
        }
        return new Plan(root, List.copyOf(libraries), rows);
    }

    /** Rows of which the module has at least one class. */
    public List<String> present(JavaClasses module) {
        return rows.keySet().stream().filter(packages(module)::contains).toList();
    }

    /** Packages of the module that no row names; a class in the root itself counts. */
    public List<String> unplanned(JavaClasses module) {
        return packages(module).stream().filter(name -> !rows.containsKey(name)).toList();
    }

    /** The rule that a row's classes use themselves, the rows it names and the libraries, and nothing else. */
    public ArchRule allows(String row) {
        List<String> allowed = new ArrayList<>(libraries);
        allowed.add(root + "." + row);
        rows.get(row).forEach(name -> allowed.add(root + "." + name));
        return classes()
                .that()
                .resideInAPackage(root + "." + row)
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(allowed.toArray(String[]::new))
                .because("the plan lets " + row + " use " + rows.get(row));
    }

    /** The rule that packages form no cycle. Holds by the plan as well; here it is asked of the classes alone. */
    public ArchRule noCycles() {
        return slices().matching(root + ".(**)").should().beFreeOfCycles().allowEmptyShould(true);
    }

    private TreeSet<String> packages(JavaClasses module) {
        TreeSet<String> names = new TreeSet<>();
        for (JavaClass type : module) {
            String name = type.getPackageName();
            names.add(name.startsWith(root + ".") ? name.substring(root.length() + 1) : name);
        }
        return names;
    }
}
