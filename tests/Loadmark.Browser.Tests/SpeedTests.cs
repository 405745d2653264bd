using System.Globalization;
using System.Text;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>
/// How long the page takes from an edit to its verdict, measured by the browser. Written down beside a round trip to the server in the same
/// run, never asserted: the machine may be busy. LOADMARK_PAGE_RESULTS names the folder it goes to; else it lies beside the tests.
/// </summary>
public sealed class SpeedTests(SharedBrowser browser, ServedPage served, ITestOutputHelper output) : PageTest(browser, served), IClassFixture<ServedPage>
{
    /// <summary>Where the table goes when it is made to be kept, with edits enough for a 95th percentile that is not the slowest.</summary>
    private static readonly string? Results = Environment.GetEnvironmentVariable("LOADMARK_PAGE_RESULTS") is { Length: > 0 } folder ? folder : null;

    private static readonly int Edits = Results is null ? 15 : 60;
    // The same for a choice that the server hears of and answers, and that has nothing to do with the rig.
    private const string WatchTheme = """
        () => {
            window.measured = new Promise((done, fail) => {
                let began = 0;
                setTimeout(() => fail(new Error(`began ${began}, the theme is unchanged`)), 30000);
                const observer = new MutationObserver(() => {
                    observer.disconnect();
                    const changed = performance.now() - began;
                    requestAnimationFrame(() => setTimeout(() => done([changed, performance.now() - began])));
                });
                observer.observe(document.documentElement, { attributeFilter: ["data-theme"] });
                document.addEventListener("change", () => began = performance.now(), { capture: true, once: true });
            });
        }
        """;

    [Fact]
    public async Task From_an_edit_to_its_verdict()
    {
        var page = (await VisitAsync(new() { ViewportSize = new() { Width = 1440, Height = 900 } })).Page;
        var twelve = await page.ImportAsync("twelve.rig.yaml", Encoding.UTF8.GetBytes(EditClock.TwelveLoads()));
        var forty = Served.AddressOf(RigPages.Festival);
        var report = new StringBuilder("# The page\n\n");
        report.Append(CultureInfo.InvariantCulture, $"Debian's Chromium, headless, 1440 by 900; {Edits} edits of a label each, committed with Enter, each of which changes the verdict or its finding and the diagram. Changed: the page's own clock from the field's change event until bar and diagram have both changed; shown: until the frame after. A round trip: choosing light or dark, which the server hears of and answers. .NET {Environment.Version}, {(BuiltProgram.File.Contains("/Release/", StringComparison.Ordinal) ? "Release" : "Debug")}, {Environment.ProcessorCount} cores, shared machine, load {Load()} at the beginning: read the ratios, not the times.\n\n| what | changed: median ms | 95 % ms | shown: median ms | 95 % ms |\n| --- | --- | --- | --- | --- |\n");
        foreach (var (what, address, load) in ((string, string, string)[])[("12 loads", twelve, "drive-1"), ("40 loads", forty, "drive-11")])
        {
            await page.OpenPartAsync(address, "gear");
            var edits = await new EditClock(page, load).MeasureAsync(Edits);

            var trips = new List<double[]>();
            for (var trip = 0; trip < Edits; trip++)
            {
                await page.EvaluateAsync(WatchTheme);
                await page.GetByLabel("Light or dark").SelectOptionAsync(trip % 2 == 0 ? "light" : "auto");
                trips.Add(await page.EvaluateAsync<double[]>("() => window.measured"));
            }

            Assert.All(edits.Concat(trips), static times => Assert.Equal(2, times.Length));
            Append(report, $"{what}, edit to verdict", edits);
            Append(report, $"{what}, a round trip", trips);
        }

        await File.WriteAllTextAsync(Path.Combine(Results ?? AppContext.BaseDirectory, "page.md"), report.ToString(), TestContext.Current.CancellationToken);
        output.WriteLine(report.ToString());
    }

    private static void Append(StringBuilder report, string what, List<double[]> times) =>
        report.Append(CultureInfo.InvariantCulture, $"| {what} | {EditClock.At(times, 0, 0.5):0} | {EditClock.At(times, 0, 0.95):0} | {EditClock.At(times, 1, 0.5):0} | {EditClock.At(times, 1, 0.95):0} |\n");

    private static string Load() => File.Exists("/proc/loadavg") ? string.Join(", ", File.ReadAllText("/proc/loadavg").Split(' ').Take(3)) : "not known";
}
