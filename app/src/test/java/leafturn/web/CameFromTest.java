package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CameFromTest {
  @ParameterizedTest
  @CsvSource({
    "127.0.0.1, this machine",
    "0:0:0:0::/64, this machine",
    "::/64, this machine",
    "192.0.2.7, 192.0.2.7",
    "2001:db8:0:1::/64, 2001:db8:0:1::/64",
    "command line, command line"
  })
  void thisMachineIsCalledSo(String address, String words) {
    assertThat(CameFrom.place(address)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Mozilla/5.0 (X11; Linux x86_64; rv:128.0) Gecko/20100101 Firefox/128.0 | Firefox on Linux",
        "Mozilla/5.0 (Linux; Android 14) AppleWebKit/537.36 Chrome/126.0 Mobile Safari/537.36"
            + " | Chrome on Android",
        "Mozilla/5.0 (iPhone; CPU iPhone OS 17_5) AppleWebKit/605.1 Version/17.5 Safari/604.1"
            + " | Safari on an iPhone",
        "Something/1.0 (Windows NT 10.0) | a browser on Windows",
        "Java-http-client/17 | a browser that does not tell its name"
      })
  void browserAndSystemAreNamedAsFarAsTheyAreTold(String agent, String words) {
    assertThat(CameFrom.browser(agent)).isEqualTo(words);
  }
}
