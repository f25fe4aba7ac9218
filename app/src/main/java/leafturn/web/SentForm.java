package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.shape.GeoJsonFile;
import leafturn.records.shape.OutlineText;
import leafturn.records.sheet.Kind;
import leafturn.web.form.Field;
import leafturn.web.form.Form;
import leafturn.web.sheet.Setting;
import leafturn.web.sheet.SheetForm;
import org.jspecify.annotations.Nullable;

/** Forms of sheets as they are sent, with the outline of a file where one came along. */
final class SentForm {
  private SentForm() {}

  /**
   * A form as it was sent.
   *
   * @param before the document it changes
   */
  static Form of(Context context, SheetForm<?> kind, Setting setting, String before) {
    Form sent = Form.sent(kind.shape(setting, before), setting.units(), context.formParamMap());
    Form form = kind.tidied(sent);
    for (Field field : form.shape().fields()) {
      if (field.type() == Field.Type.OUTLINE && context.isMultipartFormData()) {
        form = withFile(form, field, context.uploadedFile(field.path() + "File"));
      }
    }
    return kind.kind() == Kind.PROGRAMME ? ProgrammeCheck.told(form) : form;
  }

  private static Form withFile(Form form, Field field, @Nullable UploadedFile file) {
    if (file == null || file.size() == 0) {
      return form;
    }
    try {
      SourceText text = SourceText.of(file.filename(), bytes(file), GeoJsonFile.LIMIT_BYTES);
      String list = OutlineText.write(GeoJsonFile.readOne(text).outline(), form.units());
      return form.with(field.path(), list);
    } catch (InputException faults) {
      return form.faulted(field.path(), String.join(" ", faults.faults()));
    }
  }

  private static byte[] bytes(UploadedFile file) {
    try (InputStream in = file.content()) {
      return in.readNBytes(GeoJsonFile.LIMIT_BYTES + 1);
    } catch (IOException e) {
      throw new UncheckedIOException("the file that came with a form could not be read", e);
    }
  }
}
