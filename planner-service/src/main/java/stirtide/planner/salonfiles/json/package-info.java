/**
 * JSON files as records, for reading and writing. A text is parsed with the place of every value, held against its schema,
 * and turned into a file record; {@link stirtide.planner.salonfiles.json.FieldPath} leads from a field of the record back
 * to its place. Records of a setup that stand in a file as they are get their names and units of the file from mix-ins.
 */
@NullMarked
package stirtide.planner.salonfiles.json;

import org.jspecify.annotations.NullMarked;
