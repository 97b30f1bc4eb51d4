package rigside.report;

import java.util.List;

/**
 * One table of a data package, in the standard's word a resource.
 *
 * @param <R> what its rows are made of
 * @param name its name, and without {@code .csv} that of its file: small letters, digits, hyphens
 * @param title what it is, in a few words
 * @param description what a row is, in sentences
 * @param columns at least one
 * @param key the names of the columns that tell its rows apart
 * @param links the columns that name a row of another table
 * @param rows in order; may be empty
 */
record Resource<R>(
        String name,
        String title,
        String description,
        List<Column<R>> columns,
        List<String> key,
        List<Link> links,
        List<R> rows) {
    Resource {
        columns = List.copyOf(columns);
        key = List.copyOf(key);
        links = List.copyOf(links);
        rows = List.copyOf(rows);
    }

    /**
     * A column that names a row of another table.
     *
     * @param column its name
     * @param resource the other table's name
     * @param other the name of the column there
     */
    record Link(String column, String resource, String other) {}

    /** The name of its file. */
    String file() {
        return name + ".csv";
    }
}
