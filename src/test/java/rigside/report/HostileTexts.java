package rigside.report;

import java.util.List;

/** What somebody may have typed, or written into a file, that is no plain sentence. */
final class HostileTexts {
    private HostileTexts() {}

    static final List<String> ALL =
            List.of(
                    "<script>alert(1)</script>",
                    "\"><img src=x onerror=alert(1)>",
                    "' onmouseover='alert(1)",
                    "</style></title></textarea><svg/onload=alert(1)>",
                    "</details></pre></table><h1>x",
                    "&lt;b&gt; &#x3c;i&#x3e; &amp;",
                    "<!-- --> ]]> <![CDATA[ x",
                    "a | b \\| c \\\\| d",
                    "`code` ``x``` ~~struck~~ *a* **b** _c_ __d__ $x$",
                    "[link](javascript:alert(1)) ![image](x.png) [ref][1] [^1] <http://a.example>",
                    "http://a.example www.a.example a@b.example",
                    "# heading #",
                    "- list",
                    "1. list",
                    "\\",
                    "ends with \\",
                    "=HYPERLINK(\"http://a.example\")",
                    "+1+cmd|' /C calc'!A0",
                    "@SUM(1+1)",
                    "red \u001B[31m and \u009B2J bell \u0007 nul \u0000",
                    "\u202Egnirts \u2066x\u2069 \u200Fright",
                    "zero\u200Bwidth \uFEFF mark",
                    "line\u2028end \u2029 end",
                    "e\u0301\u0323\u0301\u0323\u0301\u0323\u0301\u0323 marks",
                    "\u05E9\u05DC\u05D5\u05DD 12 \u0645\u0631\u062D\u0628\u0627",
                    "\uD83D\uDC4D\uD83C\uDFFD emoji \uD83D\uDC69\u200D\uD83D\uDD27",
                    "\uD800 lone",
                    "two\nlines\r\nand\ttab",
                    "x".repeat(100_000),
                    "{{7*7}} ${jndi:x} %n %s");
}
