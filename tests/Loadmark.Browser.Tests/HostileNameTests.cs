using System.Text;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>Names and labels are text, whatever they hold: in the page, in its pictures and in what it exports.</summary>
public sealed class HostileNameTests(SharedBrowser browser, ServedPage served) : PageTest(browser, served), IClassFixture<ServedPage>
{
    private const string Script = "<script>alert(1)</script>";
    private const string Image = "\"><img src=x onerror=alert(2)>";
    private const string Turned = "\u202Edetrever\u202C";
    private const string Formula = "=HYPERLINK(\"http://rigs.example\")";

    private static readonly string LongName = string.Concat(Enumerable.Repeat("endless ", 625));

    private static string Rig => $$"""
        rig: {{Quoted(Script + Image)}}
        loads:
          {{Quoted("<b>OD</b>")}}: { name: {{Quoted(Image)}}, label: {{Quoted("9V DC 12mA centre negative " + Script)}} }
          {{Quoted(Formula)}}: { name: {{Quoted("@SUM(A1)")}}, label: {{Quoted("+9V DC 30mA " + Image)}} }
          {{Quoted(Turned)}}: { name: {{Quoted(Turned)}}, label: {{Quoted("9V DC 10mA " + Turned)}} }
          {{Quoted("-1+1")}}: { name: {{Quoted(LongName)}}, label: 9V DC 20mA }
        supplies:
          {{Quoted("<svg onload=alert(3)>")}}:
            name: {{Quoted(LongName)}}
            label: {{Quoted("INPUT 100-240V~ " + Image)}}
            outlets: { 1-4: 9 V 150 mA }
        leads:
          {{Quoted("</title><script>alert(4)</script>")}}: { type: daisy chain, plugs: 3 }
        wired:
          - { from: {{Quoted("<svg onload=alert(3)>/1")}}, lead: {{Quoted("</title><script>alert(4)</script>")}}, to: [{{Quoted("<b>OD</b>")}}, {{Quoted(Formula)}}] }
          - { from: {{Quoted("<svg onload=alert(3)>/2")}}, to: {{Quoted(Turned)}} }

        """;

    [Fact]
    public async Task Hostile_names_are_shown_as_text_on_every_part()
    {
        var page = (await VisitAsync()).Page;
        var address = await page.ImportAsync("hostile.rig.yaml", Encoding.UTF8.GetBytes(Rig));
        foreach (var (part, _) in RigPages.Parts)
        {
            await page.OpenPartAsync(address, part);
            await PartOpener.OpenAsync(page, part);
            await Expect(page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync(Script + Image);
            Assert.Empty(await page.EvaluateAsync<string[]>(
                "() => [...document.querySelectorAll('script:not([src]), img, b, svg[onload], [onerror], [onclick], iframe, object')].map(element => element.outerHTML.slice(0, 200))"));
            Assert.Empty(await Layout.WideAsync(page));
        }

        await page.OpenPartAsync(address, "gear");
        await Expect(page.GetByRole(AriaRole.Region, new() { Name = "Diagram" }).Locator("svg.scene")).ToContainTextAsync("<b>OD</b>");
        await page.OpenRigsAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = Script + Image, Exact = true }).First).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Hostile_names_do_not_turn_what_stands_beside_them_around()
    {
        var page = (await VisitAsync()).Page;
        var address = await page.ImportAsync("hostile.rig.yaml", Encoding.UTF8.GetBytes(Rig));
        foreach (var (part, _) in RigPages.Parts)
        {
            await page.OpenPartAsync(address, part);
            await PartOpener.OpenAsync(page, part);

            // What turns the direction of writing is shown as a sign wherever it cannot be edited.
            Assert.Empty(await page.EvaluateAsync<string[]>("""
                () => [document.title, ...[...document.querySelectorAll("body *")].filter(element => element.localName !== "textarea").flatMap(element =>
                    [...[...element.childNodes].filter(node => node.nodeType === 3).map(node => node.data), element.getAttribute("title"), element.getAttribute("aria-label")])]
                    .filter(text => text && /[\u202A-\u202E\u2066-\u2069]/.test(text)).map(text => text.slice(0, 60))
                """));
        }
    }

    [Fact]
    public async Task Exported_cells_are_no_formulas()
    {
        var page = (await VisitAsync()).Page;
        var address = await page.ImportAsync("hostile.rig.yaml", Encoding.UTF8.GetBytes(Rig));
        var answer = await page.APIRequest.GetAsync($"{address}/loads.csv");
        var cells = Cells(await answer.TextAsync()).ToList();
        Assert.Contains(cells, static cell => cell.Contains("HYPERLINK", StringComparison.Ordinal));
        Assert.Contains(cells, static cell => cell.Contains("SUM(A1)", StringComparison.Ordinal));
        Assert.DoesNotContain(cells, static cell => cell.Length > 0 && cell[0] is '=' or '+' or '-' or '@' or '\t' or '\r');
    }

    [Fact]
    public async Task Hostile_text_that_is_typed_stays_text()
    {
        var page = (await VisitAsync()).Page;
        await page.OpenRigsAsync();
        await page.GetByLabel("A new rig").FillAsync(Script);
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin" }).ClickAsync();
        await page.WaitForPartAsync("gear");
        await page.GetByLabel("Add loads: one label a line").FillAsync($"<i>drive-1</i>: 9V 12mA {Image}\nextra-2: {LongName}\n{Formula}\t9V DC 10mA");
        await Expect(page.GetByRole(AriaRole.List, new() { Name = "How the lines read" })).ToContainTextAsync("onerror=alert(2");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add 2 loads" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.List, new() { Name = "Loads" }).GetByRole(AriaRole.Listitem).First).ToBeVisibleAsync();
        Assert.Equal(0, await page.Locator("main i, main img, script:not([src])").CountAsync());
        Assert.Empty(await Layout.WideAsync(page));
    }

    private static string Quoted(string text) => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    // RFC 4180: cells between commas, in quotes where they hold one, quotes doubled.
    private static IEnumerable<string> Cells(string csv)
    {
        var cell = new StringBuilder();
        var inQuotes = false;
        foreach (var (index, character) in csv.TrimStart('\uFEFF').Index())
        {
            switch (character)
            {
                case '"':
                    inQuotes = !inQuotes;
                    if (inQuotes && index > 0 && cell.Length > 0)
                        cell.Append('"');
                    break;
                case ',' or '\n' when !inQuotes:
                    yield return cell.ToString();
                    cell.Clear();
                    break;
                case '\r' when !inQuotes:
                    break;
                default:
                    cell.Append(character);
                    break;
            }
        }

        yield return cell.ToString();
    }
}
