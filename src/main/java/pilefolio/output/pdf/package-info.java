/**
 * From XHTML to paper.
 *
 * <pre>{@code
 * PdfRenderer renderer = new PdfRenderer(TemplateSource.shipped());   // or TemplateSource.folder(path)
 * RenderedPdf pdf = renderer.render(
 *     PdfOrder.of(xhtml, info, Paper.A4)
 *         .figures(figures)                        // pilefolio.output.figure.Figure
 *         .attach(pages -> List.of(new Attachment(...)))   // asked for when the pages are known
 *         .stamped("DRAFT"));                      // optional
 * pdf.pages().pageOf("an-id");                     // page on which an element begins
 * }</pre>
 *
 * <p>The same order gives the same bytes. {@link pilefolio.output.pdf.PrintFaultException} lists
 * everything that would be lost or wrong on paper; nothing is written then.
 *
 * <h2>The XHTML</h2>
 *
 * Well-formed, no document type, no named entities but the five of XML; characters are written as
 * such. The head holds {@code <link rel="stylesheet" type="text/css" href="document.css"/>} (the
 * sheet for the paper is added by the renderer) and optionally
 *
 * <pre>{@code
 * <bookmarks><bookmark name="1 Ground" href="#c1"><bookmark name="1.1 Layers" href="#c11"/></bookmark></bookmarks>
 * }</pre>
 *
 * <p>Fonts: Liberation Sans, Serif, Mono. They lack, among others, the subscript digits, the check
 * mark, the empty set and diameter signs: write {@code <sub>} and words. Every {@code href="#x"}
 * needs an element with that id; ids are unique.
 *
 * <h2>Elements of our own</h2>
 *
 * <ul>
 *   <li>{@code <math tex="..." alt="..."/>}: a formula, see {@link
 *       pilefolio.output.pdf.math.TexParser} for the notation. {@code alt} is the same on one line
 *       of plain text: what a search finds and a copy gives. Breaks by itself at = and + when the
 *       column is too narrow.
 *   <li>{@code <object type="figure" data="id"/>}: a figure by its id; drawn at its own size, or
 *       smaller when the column is narrower, or to a width in its style.
 * </ul>
 *
 * <h2>Classes of document.css</h2>
 *
 * <ul>
 *   <li>Running head and foot, first in the body: {@code <div class="header"><table><tr><td><span
 *       class="title">..</span><br/>..</td><td class="right">..</td></tr></table></div>}, {@code
 *       <div class="footer">} likewise with {@code <span class="page-number"/>} and {@code <span
 *       class="page-count"/>}.
 *   <li>Pages: {@code div.cover} (no head or foot; inside it {@code .firm .kind .name .about},
 *       {@code table.facts}), {@code div.chapter} starts a page, {@code div.wide} starts a
 *       landscape page, {@code .break} starts a page.
 *   <li>{@code div.k}: kept on one page; put a heading and what follows it in one. Headings {@code
 *       h1..h4} with the number in {@code <span class="n">}.
 *   <li>Contents: {@code <div class="toc"><a class="t1" href="#c1">1 Ground</a>..} with {@code t1},
 *       {@code t2}, {@code t3}; {@code <a class="pg" href="#x"></a>} prints a page number anywhere,
 *       {@code a.ref} is a link in the text.
 *   <li>Calculation sheet: {@code <table class="calc"><colgroup><col class="ref"/><col
 *       class="work"/><col class="res"/></colgroup><thead>..</thead>} and then one {@code tbody}
 *       for each line, with cells {@code td.ref td.work td.res}: <br>
 *       {@code <tbody class="given"><tr>} reference | math, name | = value <br>
 *       {@code <tbody class="line"><tr class="what">} reference | what it is | <br>
 *       {@code <tr class="line">} | math | = value <br>
 *       {@code <tbody class="require">} the same two rows; the result holds the verdict <br>
 *       {@code <tbody class="group">} a title in the work column, {@code <tbody class="note">} a
 *       remark there.
 *   <li>Verdicts: {@code span.ok} satisfied, {@code span.bad} not satisfied, {@code span.open} not
 *       checked, always with the word; {@code span.util} the utilisation beside it.
 *   <li>Data: {@code table.data} with {@code thead} rows {@code tr.names} and {@code tr.units}
 *       (repeated on each page), cells {@code .num} (right) and {@code .mid}, rows {@code tr.group
 *       tr.total tr.governing}; columns are as wide as {@code style="width:20mm"} on the first row
 *       says and share the rest. {@code table.data.auto} fits its content. {@code table.facts} with
 *       {@code td.key} for pairs.
 *   <li>{@code div.figure} holding an object and {@code p.caption} with {@code <b>Figure 1.1</b>}.
 *   <li>{@code p.note}, {@code div.caution} with {@code span.lead}, {@code div.box}, {@code
 *       p.formula}.
 *   <li>Method statement: {@code table.steps} with {@code td.step} and {@code td.point}, {@code
 *       span.hold}, {@code span.witness}.
 *   <li>Forms: {@code table.form} with {@code td.blank} to write in, {@code table.sign} for
 *       signatures.
 * </ul>
 *
 * <p>Keep {@code float} and {@code position} out of whatever repeats, and put a run of lines into
 * one table: time then grows evenly with the number of pages.
 */
package pilefolio.output.pdf;
