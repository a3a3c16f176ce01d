package pilefolio.output.pdf;

import freemarker.cache.TemplateLoader;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapperBuilder;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/**
 * Fills the templates: the user's folder first, then those shipped. A template only sees what it is
 * given; it can make no objects and calls no classes.
 */
public final class Templates {
  private final Configuration configuration;

  /** Templates of a source. */
  public Templates(TemplateSource source) {
    configuration = new Configuration(Configuration.VERSION_2_3_34);
    configuration.setTemplateLoader(new Loader(source));
    configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
    configuration.setLocale(Locale.ROOT);
    configuration.setNumberFormat("computer");
    configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
    configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
    configuration.setLogTemplateExceptions(false);
    configuration.setWrapUncheckedExceptions(true);
    configuration.setRecognizeStandardFileExtensions(true);
    configuration.setObjectWrapper(
        new DefaultObjectWrapperBuilder(Configuration.VERSION_2_3_34).build());
  }

  /**
   * The text of a template with its data.
   *
   * @param name file name, such as {@code calculations.ftlx}
   * @param data what it may use
   * @throws TemplateFaultException if the template is wrong; the message names template, line and
   *     column
   */
  public String fill(String name, Map<String, ?> data) {
    try {
      Template template = configuration.getTemplate(name);
      StringWriter out = new StringWriter(1 << 16);
      template.process(data, out);
      return out.toString();
    } catch (TemplateException e) {
      throw new TemplateFaultException(name, e);
    } catch (IOException e) {
      throw new TemplateFaultException(name, e);
    }
  }

  /** Reads templates through the template source, which keeps to its folder. */
  private record Loader(TemplateSource source) implements TemplateLoader {
    private record Found(String name, String text) {}

    @Override
    public Object findTemplateSource(String name) {
      return source
          .read(name)
          .map(content -> new Found(name, new String(content, StandardCharsets.UTF_8)))
          .orElse(null);
    }

    @Override
    public long getLastModified(Object found) {
      return 0;
    }

    @Override
    public Reader getReader(Object found, String encoding) {
      return new StringReader(((Found) found).text());
    }

    @Override
    public void closeTemplateSource(Object found) {
      // Read as a whole, so nothing is open.
    }
  }
}
