package rigside.report;

/** How HTML pages look. System fonts only; paper is always black on white. */
final class Style {
    private Style() {}

    static final String CSS =
            """
            :root { color-scheme: light dark; --ink: #1d2023; --quiet: #5a6168; --paper: #fdfdfb;
              --rule: #c9cdd1; --wash: #f1f2ee; --band: #e6e8e3; --mark: #9a3412; }
            @media (prefers-color-scheme: dark) {
              :root { --ink: #e4e6e3; --quiet: #a3aab0; --paper: #181a1b; --rule: #43494e;
                --wash: #222527; --band: #2b3033; --mark: #fdba74; } }
            * { box-sizing: border-box; }
            body { margin: 0; background: var(--paper); color: var(--ink);
              font: 1rem/1.5 system-ui, "Segoe UI", "Helvetica Neue", Arial, sans-serif; }
            main { max-width: 54rem; margin: 0 auto; padding: 1.5rem 1rem 4rem;
              overflow-wrap: break-word; }
            header { border-bottom: 2px solid var(--ink); padding-bottom: .5rem; margin-bottom: 1rem; }
            h1 { font-size: 1.6rem; line-height: 1.2; margin: 0 0 .3rem; }
            h2 { font-size: 1.2rem; line-height: 1.3; margin: 2rem 0 .5rem;
              border-bottom: 1px solid var(--rule); padding-bottom: .2rem; }
            h3 { font-size: 1rem; margin: 1.2rem 0 .3rem; }
            h4 { font-size: .95rem; margin: 1rem 0 .2rem; }
            h2, h3, h4 { break-after: avoid; }
            p { margin: .3rem 0; max-width: 44rem; }
            .under { font-size: 1.1rem; color: var(--quiet); }
            .aside { font-weight: normal; font-size: .9rem; color: var(--quiet); margin-left: .5rem; }
            .caution { border-left: 4px solid var(--mark); background: var(--wash);
              padding: .4rem .7rem; margin: .5rem 0; font-weight: 600; }
            ul { margin: .3rem 0; padding-left: 1.2rem; max-width: 44rem; }
            li { margin: .15rem 0; }
            .wide { overflow-x: auto; margin: .9rem 0; }
            table { border-collapse: collapse; width: 100%; font-size: .93rem; }
            th, td { text-align: left; vertical-align: top; padding: .3rem .8rem .3rem 0;
              border-bottom: 1px solid var(--rule); }
            thead th { border-bottom: 1.5px solid var(--quiet); font-weight: 600; }
            th, td { overflow-wrap: break-word; }
            tbody th { font-weight: normal; }
            table:has(caption) { width: auto; min-width: 50%; }
            table:has(caption) :is(th, td) { padding-right: 1.4rem; }
            caption { text-align: left; font-weight: 600; padding: .3rem 0; caption-side: top;
              width: min(100%, 100vw - 2rem); }
            .pairs th { font-weight: normal; color: var(--quiet); width: 30%; }
            .figures { text-align: right; font-variant-numeric: tabular-nums; }
            .short, .terse { white-space: nowrap; }
            .long { min-width: 14rem; }
            tr { break-inside: avoid; }
            caption, thead { break-after: avoid; }
            tbody tr:first-child { break-before: avoid; }
            .blank { display: inline-block; max-width: 100%; height: 1.6em; vertical-align: bottom;
              border-bottom: 1px solid var(--ink); }
            .tick { display: inline-block; margin-right: .8em; white-space: nowrap; }
            .tick i { display: inline-block; width: .95em; height: .95em; margin-right: .35em;
              vertical-align: -.1em; border: 1px solid var(--ink); border-radius: 2px; }
            .stated { font-size: 1.1rem; margin: .9rem 0 0; }
            .stated + p { margin-top: 0; }
            nav { margin: 1.2rem 0; }
            nav ol { columns: 15rem; column-gap: 2.5rem; margin: .3rem 0; padding-left: 1.6rem; }
            nav li { break-inside: avoid; }
            a { color: inherit; }
            summary { cursor: pointer; font-weight: 600; padding: .3rem 0; }
            pre { overflow-x: auto; font: .82rem/1.4 ui-monospace, Menlo, Consolas, monospace;
              background: var(--wash); padding: .6rem .8rem; margin: .5rem 0; }
            .room { break-inside: avoid; margin-top: .8rem; }
            .line { height: 2em; border-bottom: 1px solid var(--rule); }
            figure { margin: 1rem 0 1.4rem; }
            figure svg { display: block; width: 100%; height: auto; overflow: visible;
              font-family: Arial, Helvetica, "Liberation Sans", "Nimbus Sans", "DejaVu Sans",
                sans-serif; }
            figcaption { font-size: .93rem; color: var(--quiet); margin-top: .2rem; }
            .narrow-figure { display: none; max-width: 30rem; }
            .f-ink { fill: var(--ink); } .s-ink { stroke: var(--ink); }
            .f-quiet { fill: var(--quiet); } .s-quiet { stroke: var(--quiet); }
            .f-rule { fill: var(--rule); } .s-rule { stroke: var(--rule); }
            .f-wash { fill: var(--band); } .s-wash { stroke: var(--band); }
            .f-mark { fill: var(--mark); } .s-mark { stroke: var(--mark); }
            .f-paper { fill: var(--paper); } .s-paper { stroke: var(--paper); }
            @media screen and (max-width: 44rem) {
              figure .wide-figure { display: none; } figure .narrow-figure { display: block; } }
            @page { size: A4; margin: 15mm 14mm; }
            @media print {
              :root { color-scheme: light; --ink: #000; --quiet: #333; --paper: #fff; --rule: #999;
                --wash: #fff; --band: #e4e4e4; --mark: #000; }
              body { font-size: 10pt; line-height: 1.35; }
              main { max-width: none; padding: 0; }
              h2 { margin-top: 1.1rem; }
              h3 { margin: .7rem 0 .15rem; }
              h4 { margin: .5rem 0 .1rem; }
              p { margin: .15rem 0; }
              th, td { padding-top: .12rem; padding-bottom: .12rem; }
              .room { margin-top: .3rem; }
              .line { height: 1.7em; }
              .wide { margin: .2rem 0; overflow: visible; }
              figure { break-inside: avoid; }
              table { font-size: 9pt; }
              .long { min-width: 0; }
              table:not(.narrow) .terse { white-space: normal; }
              .pairs th { width: 25%; }
              td, tbody th { overflow-wrap: anywhere; }
              figcaption { font-size: 9pt; }
              nav { display: none; }
              details:not([open]) > summary { list-style: none; font-weight: normal; }
              details:not([open]) > summary::after { content: ": in the file this was printed from"; }
              pre { white-space: pre-wrap; overflow-wrap: anywhere; }
              .new-page { break-before: page; }
            }
            """;
}
