package leafturn.browser;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.cert.Certificate;
import java.util.Base64;
import java.util.concurrent.TimeUnit;

/**
 * A certificate for {@code localhost}, made for one test by the JDK's own tool and good for a day.
 *
 * @param certificate the PEM file of the certificate
 * @param key the PEM file of its key
 * @param publicKeyHash SHA-256 of the public key, by which a browser can be told to trust it
 */
record TestCertificate(Path certificate, Path key, String publicKeyHash) {
  private static final String PASSWORD = "only-for-this-test";
  private static final String ALIAS = "test";

  static TestCertificate in(Path folder)
      throws IOException, InterruptedException, GeneralSecurityException {
    Path store = folder.resolve("test.p12");
    generate(store);
    KeyStore keys = KeyStore.getInstance("PKCS12");
    try (InputStream stream = Files.newInputStream(store)) {
      keys.load(stream, PASSWORD.toCharArray());
    }
    Certificate certificate = keys.getCertificate(ALIAS);
    Key key = keys.getKey(ALIAS, PASSWORD.toCharArray());
    return new TestCertificate(
        pem(folder.resolve("test.crt"), "CERTIFICATE", certificate.getEncoded()),
        pem(folder.resolve("test.key"), "PRIVATE KEY", key.getEncoded()),
        hash(certificate.getPublicKey().getEncoded()));
  }

  private static void generate(Path store) throws IOException, InterruptedException {
    Path tool = Path.of(System.getProperty("java.home"), "bin", "keytool");
    Process process =
        new ProcessBuilder(
                tool.toString(),
                "-genkeypair",
                "-alias",
                ALIAS,
                "-keyalg",
                "EC",
                "-groupname",
                "secp256r1",
                "-dname",
                "CN=localhost",
                "-ext",
                "san=dns:localhost",
                "-validity",
                "1",
                "-storetype",
                "PKCS12",
                "-keystore",
                store.toString(),
                "-storepass",
                PASSWORD)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (!process.waitFor(60, TimeUnit.SECONDS) || process.exitValue() != 0) {
      throw new IllegalStateException("keytool made no certificate");
    }
  }

  private static Path pem(Path file, String what, byte[] content) throws IOException {
    String lines =
        Base64.getMimeEncoder(64, "\n".getBytes(StandardCharsets.US_ASCII)).encodeToString(content);
    return Files.writeString(
        file, "-----BEGIN " + what + "-----\n" + lines + "\n-----END " + what + "-----\n");
  }

  private static String hash(byte[] content) throws GeneralSecurityException {
    return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256").digest(content));
  }
}
