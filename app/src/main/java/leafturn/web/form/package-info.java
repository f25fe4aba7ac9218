/** Forms: from one list of fields a page, a JSON document, and each fault beside its field. */
@NullMarked
package leafturn.web.form;

import org.jspecify.annotations.NullMarked;
