package thwartwise.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What nobody should type and somebody will. */
public final class OddInputs {
  private static final String LINES =
      """
      -
      --
      .
      ,
      ;
      :
      /
      *
      +
      =
      ~
      ?!
      0
      -0
      +0
      00
      -1
      -0.5
      +1
      1e400
      1e-400
      1e3
      1E3
      -1e308
      NaN
      nan kg
      Infinity
      -Infinity
      inf
      null
      undefined
      true
      false
      0x1F
      0b11
      1_000
      1d
      1f
      1L
      999999999999
      -999999999999
      2147483648
      9223372036854775808
      0.0000000000000000001
      1/0
      0/0
      1/3
      -1/2
      1 1/0
      1/2/3
      1,020
      1.020,5
      1'020
      1 020
      1.2.3
      1..2
      .5.
      5,
      ,5
      3' 14"
      3' -4"
      -3' 4"
      3''
      3"4'
      3' 4" 5"
      '
      ''
      "
      ""
      '"'
      `
      \\
      \\\\
      \\n
      \\u0041
      %s%n%d
      %
      %1$s
      ${name}
      #{1+1}
      {{name}}
      $(ls)
      `ls`
      ; rm
      | less
      > out
      && true
      ../..
      /etc/hosts
      C:\\con
      nul
      <b>
      <script>alert(1)</script>
      &lt;
      ]]>
      <!--
      {"a":1}
      [1,2]
      {
      }
      ' OR '1'='1
      2 kg 3
      kg
      kg 2
      2kg3
      2 x
      x 2
      2 x 3 x 4 kg
      -2 x 6 kg
      0 x 6 kg
      1e9 x 1 kg
      2 × 6 kg
      3 gal
      3 furlongs
      1 m 2 m
      1 m 2 kg
      1 mm
      1 km
      1 mile
      12 st
      12 st 4
      12 st 99
      st 4
      12 stone 4 lb 5 oz
      40 1/2
      40 1/2 1/2
      1 kWh
      5 hp
      10 min
      10 s
      1 h 2 h
      about
      about about 20
      about NaN
      ~
      ~~ 20
      about -20
      indeed
      20 indeed
      indeed indeed
      yes no
      yes indeed
      maybe
      ja
      y/n
      today
      today indeed
      tomorrow
      yesterday
      2026-02-30
      2026-13-01
      2026-00-00
      0000-00-00
      9999-12-31
      -2026-05-01
      20260501
      1.5.2026
      05/01/2026
      2026-5-1
      2026-05-01T10:00
      26-05-01
      first of May
      change
      change 0
      change 99999
      change -1
      change 1 2
      change one
      change １
      list list
      back back
      stop it
      helpme
      why not
      skip it
      show me
      none at all
      no no
      half
      two
      II
      ½
      1½
      ²
      π
      ∞
      √2
      −5
      1–2
      1-2
      5±1
      5 m²
      5°
      5 %
      ５
      １．５
      ٣
      ۳٫۵
      三
      é
      ß
      ﬀ
      İ
      Ǆ
      Ω
      🛶
      👩‍👧
      🇬🇧
      ❤️
      שלום
      مُحَمَّد
      العربية 80
      ไทย
      हिन्दी
      한국어
      湯呑
      """;

  private static final int LONG = 1_000_000;

  private OddInputs() {}

  public static List<String> all() {
    List<String> all = new ArrayList<>(LINES.lines().toList());
    all.addAll(List.of("", " ", "\t", "\n", "\r\n", "a\nb", "a\rb", " 1 ", "1\u00a0m", "\u3000"));
    all.addAll(List.of("e\u0301", "a" + "\u0301".repeat(500), "\ud800", "\udc00x", "\u0000\u0000"));
    all.addAll(
        List.of("\u001b[2J\u001b[31m", "\u001b]0;title\u0007", "\u001b]8;;x\u001b\\", "\u009b2J"));
    IntStream.of(0, 1, 3, 4, 7, 8, 11, 12, 26, 27, 28, 31, 127, 0x80, 0x85, 0x9f)
        .forEach(c -> all.add("a" + Character.toString(c) + "b"));
    IntStream.of(
            0xad, 0x200b, 0x200d, 0x200e, 0x200f, 0x2028, 0x2029, 0x202a, 0x202e, 0x2060, 0x2066,
            0x2069, 0xfeff, 0xfff9, 0xfffd, 0xffff, 0x1f3f4, 0xe0001, 0xe0067, 0x10ffff)
        .forEach(c -> all.add(Character.toString(c) + "1"));
    all.addAll(List.of("x".repeat(31), "x".repeat(300), "1".repeat(400), "0.".repeat(200)));
    all.addAll(List.of("x".repeat(LONG), "9".repeat(LONG), "' ".repeat(LONG / 2)));
    return all.stream().distinct().toList();
  }
}
