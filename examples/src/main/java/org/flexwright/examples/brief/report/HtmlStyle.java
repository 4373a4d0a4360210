package org.flexwright.examples.brief.report;

/** The look of the report: dark ink on white, told apart by lightness and words, not by hue. */
final class HtmlStyle {

  static final String CSS =
      """

      body { font: 16px/1.5 "DejaVu Sans", Verdana, sans-serif; color: #22313f;
        background: #fff; max-width: 66rem; margin: 2rem auto; padding: 0 1rem; }
      h1 { font-size: 1.7rem; margin-bottom: .3rem; }
      h2 { font-size: 1.25rem; margin-top: 2.2rem; border-bottom: 2px solid #d8b65a; }
      h3, h4 { font-size: 1rem; margin: 1.2rem 0 .3rem; }
      .lead { color: #44586a; margin-top: 0; }
      .question { font-style: italic; }
      table { border-collapse: collapse; width: 100%; font-size: .8rem; margin: .6rem 0; }
      th, td { text-align: left; padding: .25rem .4rem; border-bottom: 1px solid #cfd8de;
        vertical-align: top; }
      .figure, tbody th { white-space: nowrap; }
      thead th { background: #eef2f4; }
      td.meets { background: #22313f; color: #fff; }
      td.open { background: #f2e6c4; }
      td.fails { color: #8a2f4c; text-decoration: underline; }
      figure { margin: 1rem 0; }
      figcaption { font-size: .85rem; color: #44586a; }
      svg { width: 100%; max-width: 50rem; height: auto; font-size: 14px; }
      .caution { border: 2px solid #8a2f4c; padding: 0 1rem .6rem; margin-top: 2rem; }
      .caution h2 { border: 0; margin-top: .8rem; color: #8a2f4c; }
      ul { padding-left: 1.2rem; }
      .caveats { font-size: .85rem; }
      footer { margin-top: 3rem; color: #44586a; font-size: .8rem; }
      @media print { body { max-width: none; margin: 0; } section, figure { break-inside: avoid; } }
      """;

  private HtmlStyle() {}
}
