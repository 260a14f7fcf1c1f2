/**
 * Fields, forms and questions. A form says which fields it has and what Enter does; FieldSet moves the focus and
 * validates.
 */
@NullMarked
package stirtide.bar.panels.form;

import org.jspecify.annotations.NullMarked;
