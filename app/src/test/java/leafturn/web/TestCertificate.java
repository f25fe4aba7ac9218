package leafturn.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/**
 * A certificate for tests, signed by itself, as PEM files; the Java runtime's own tool makes it.
 *
 * @param certificate file of the certificate
 * @param key file of its key
 * @param trust a context that trusts it
 */
record TestCertificate(Path certificate, Path key, SSLContext trust) {
  private static final String PASSWORD = "only for tests";

  /** Makes one for localhost, 127.0.0.1 and names below lawns.example. */
  static TestCertificate make(Path parent, String algorithm) {
    try {
      Path folder = Files.createTempDirectory(parent, algorithm);
      Path store = folder.resolve(algorithm + ".p12");
      keytool(
          List.of(
              "-genkeypair",
              "-keystore",
              store.toString(),
              "-storetype",
              "PKCS12",
              "-storepass",
              PASSWORD,
              "-alias",
              "site",
              "-keyalg",
              algorithm,
              "-dname",
              "CN=Leafturn test",
              "-validity",
              "2",
              "-ext",
              "san=dns:localhost,dns:*.lawns.example,ip:127.0.0.1"));
      KeyStore keys = KeyStore.getInstance("PKCS12");
      try (InputStream in = Files.newInputStream(store)) {
        keys.load(in, PASSWORD.toCharArray());
      }
      Path certificate = folder.resolve(algorithm + "-certificate.pem");
      Path key = folder.resolve(algorithm + "-key.pem");
      write(certificate, "CERTIFICATE", keys.getCertificate("site").getEncoded());
      write(key, "PRIVATE KEY", keys.getKey("site", PASSWORD.toCharArray()).getEncoded());
      return new TestCertificate(certificate, key, trusting(keys));
    } catch (GeneralSecurityException | IOException e) {
      throw new IllegalStateException("no certificate could be made for the test", e);
    }
  }

  private static SSLContext trusting(KeyStore keys) throws GeneralSecurityException, IOException {
    KeyStore trusted = KeyStore.getInstance("PKCS12");
    trusted.load(null, null);
    trusted.setCertificateEntry("site", keys.getCertificate("site"));
    TrustManagerFactory factory =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    factory.init(trusted);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, factory.getTrustManagers(), null);
    return context;
  }

  private static void write(Path file, String kind, byte[] content) throws IOException {
    String text =
        "-----BEGIN %1$s-----%n%2$s%n-----END %1$s-----%n"
            .formatted(
                kind,
                Base64.getMimeEncoder(64, "\n".getBytes(StandardCharsets.US_ASCII))
                    .encodeToString(content));
    Files.writeString(file, text);
  }

  private static void keytool(List<String> arguments) throws IOException {
    Path tool = Path.of(System.getProperty("java.home"), "bin", "keytool");
    List<String> command = new java.util.ArrayList<>(List.of(tool.toString()));
    command.addAll(arguments);
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      if (!process.waitFor(60, TimeUnit.SECONDS) || process.exitValue() != 0) {
        throw new IllegalStateException("keytool did not make a certificate");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while making a certificate", e);
    }
  }
}
