using System.Globalization;
using System.Text;
using Loadmark.Browser.Tests.House;

namespace Loadmark.Browser.Tests;

/// <summary>
/// An open page goes on while others ask for more than there is. That it answers is asserted; how fast is written down beside the same edits
/// with nothing else to do, to LOADMARK_PAGE_RESULTS where that names a folder.
/// </summary>
public sealed class LoadTests(SharedBrowser browser, ServedPage served, ITestOutputHelper output) : PageTest(browser, served), IClassFixture<ServedPage>
{
    private static readonly string? Results = Environment.GetEnvironmentVariable("LOADMARK_PAGE_RESULTS") is { Length: > 0 } folder ? folder : null;
    private static readonly int Edits = Results is null ? 4 : 60;

    [Fact]
    public async Task An_edit_has_its_verdict_whatever_else_is_asked_for()
    {
        var page = (await VisitAsync(new() { ViewportSize = new() { Width = 1440, Height = 900 } })).Page;
        await page.OpenPartAsync(await page.ImportAsync("twelve.rig.yaml", Encoding.UTF8.GetBytes(EditClock.TwelveLoads())), "gear");
        var clock = new EditClock(page, "drive-1");
        var report = new StringBuilder("# The page under load\n\n");
        report.Append(CultureInfo.InvariantCulture, $"An open page of twelve loads, {Edits} edits a row, each with another verdict, measured as in page.md while other callers of the same program do what the row says, all of it at once and until the row is done. Callers and browser share the machine's {Environment.ProcessorCount} cores with the program. .NET {Environment.Version}, shared machine: read the ratios to the first row, not the times.\n\n| meanwhile | changed: median ms | 95 % ms | shown: median ms | 95 % ms | answered | refused for want of room |\n| --- | --- | --- | --- | --- | --- | --- |\n");
        await MeasureAsync("nothing", static _ => { });
        await MeasureAsync("50 callers, each with a plan of 60 loads after the other", static press => press.Ask(50, "/api/plan", HardRig.Sixty()));
        await MeasureAsync("30 streams of events of such plans that nobody reads", static press => press.LeaveStreamsOpen(30));
        await MeasureAsync("50 callers that send a letter a second, 50 that say nothing", static press => { press.AskSlowly(50); press.SayNothing(50); });
        await MeasureAsync("thousands of connections that come and go", static press => press.ComeAndGo());
        await MeasureAsync("10 callers with bodies of 900 kB, lists in lists", static press => press.Ask(10, "/api/check", "rig: x\nloads: " + new string('[', 900_000)));
        if (Results is not null)
            report.Append(await SessionsAsync(page));
        if (Results is not null)
            await File.WriteAllTextAsync(Path.Combine(Results, "load.md"), report.ToString(), TestContext.Current.CancellationToken);
        output.WriteLine(report.ToString());

        async Task MeasureAsync(string what, Action<Pressure> begin)
        {
            await using var pressure = new Pressure(Served.Program);
            begin(pressure);
            await Task.Delay(Results is null ? 100 : 2000, TestContext.Current.CancellationToken);
            var edits = await clock.MeasureAsync(Edits);
            Assert.Equal(0, pressure.Count.Other);
            report.Append(CultureInfo.InvariantCulture, $"| {what} | {EditClock.At(edits, 0, 0.5):0} | {EditClock.At(edits, 0, 0.95):0} | {EditClock.At(edits, 1, 0.5):0} | {EditClock.At(edits, 1, 0.95):0} | {pressure.Count.Answered} | {pressure.Count.Refused} |\n");
        }
    }

    /// <summary>What the process holds while windows on a rig open, edit and close, one after the other.</summary>
    private async Task<string> SessionsAsync(IPage first)
    {
        const int Sessions = 500;
        var address = Served.AddressOf(RigPages.Festival);
        var (figures, told) = (new StringBuilder("| windows so far | 0 |"), new StringBuilder($"| resident memory, MB | {Resident():0} |"));
        for (var session = 1; session <= Sessions; session++)
        {
            var page = await first.Context.NewPageAsync();
            await page.OpenPartAsync(address, "gear");
            await page.CloseAsync();
            if (session % 50 == 0)
            {
                figures.Append(CultureInfo.InvariantCulture, $" {session} |");
                told.Append(CultureInfo.InvariantCulture, $" {Resident():0} |");
            }
        }

        return $"\n# {Sessions} windows\n\nEach opens a rig of 40 loads and its part for gear, and closes, one after the other.\n\n{figures}\n{string.Concat(Enumerable.Repeat("| --- ", (Sessions / 50) + 2))}|\n{told}\n";
    }

    /// <summary>The memory of the program that is in the machine's, MB.</summary>
    private double Resident() =>
        double.Parse(
            File.ReadAllLines($"/proc/{Served.Program.Id}/status").First(static line => line.StartsWith("VmRSS", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[^2],
            CultureInfo.InvariantCulture) / 1024;

    /// <summary>What callers who have left had asked for is ended: the room is there for the next at once.</summary>
    [Fact]
    public async Task Who_leaves_is_no_longer_computed_for()
    {
        await using (var pressure = new Pressure(Served.Program))
        {
            pressure.Ask(30, "/api/plan", HardRig.Sixty());
            while (pressure.Count.Refused == 0)
                await Task.Delay(20, TestContext.Current.CancellationToken);
        }

        // Each of those that had a place was to be computed for seconds, one after the other: the next would be refused a thousand times.
        await using var next = new Pressure(Served.Program);
        var waited = System.Diagnostics.Stopwatch.StartNew();
        next.Ask(1, "/api/check", EditClock.TwelveLoads());
        while (next.Count.Answered == 0)
            await Task.Delay(20, TestContext.Current.CancellationToken);
        output.WriteLine($"The next was answered after {waited.ElapsedMilliseconds} ms.");
        Assert.InRange(next.Count.Refused, 0, 100);
        Assert.Equal(0, next.Count.Other);
    }
}
