using System.Diagnostics;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Web.Hosting;
using Loadmark.Web.Layout;
using Loadmark.Web.Pages;
using Loadmark.Web.Views;
using Loadmark.Workshop.Sessions;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.JSInterop;

namespace Loadmark.Bench;

/// <summary>Fifty people who edit at once, each a rig of their own in one store: how long from an edit to its verdict, and what memory that takes.</summary>
internal static class SessionsBench
{
    private const int Sessions = 50;

    /// <summary>Nobody edits much faster than once a second.</summary>
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(1);

    public static int Run(int seconds)
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-sessions-").FullName;
        try
        {
            RunAsync(folder, TimeSpan.FromSeconds(seconds)).GetAwaiter().GetResult();
            return 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task RunAsync(string folder, TimeSpan length)
    {
        var table = new ResultTable(
            "Fifty sessions at once",
            $"""
            Release. {Sessions} sessions in one process edit for {length.TotalSeconds:0} s, each its own copy of examples/pit.rig.yaml in one store on the disk of the temporary folder:
            the label of a load is changed, and a second after its verdict the next one. An edit is over when every rule has judged the rig, the circuit included, and the edit is on
            the disk; in the page also drawn. "Bench" drives what stands behind a page (`RigSession`). "Page" drives the whole page of a rig, its layout and its Gear part, by the events
            that a browser sends, in a renderer like a circuit's own; what a circuit does besides, packing what was drawn and sending it over a socket, is not in it, and no browser is.
            Memory is managed memory after a full collection, once all sessions are open and at the end. {ResultTable.Machine}
            """,
            "what", "edits", "median", "95th percentile", "longest", "memory at start", "at the end", "working set at the end");
        using var store = new Store(Path.Combine(folder, "kept"), TimeProvider.System);
        await store.OpenAsync();
        var text = await File.ReadAllTextAsync(Path.Combine("examples", "pit.rig.yaml"));
        var load = Files.RigFileReader.Read(text, "").Rig!.Loads[0].Id;

        var benches = new List<RigSession>();
        for (var session = 0; session < Sessions; session++)
        {
            var bench = new RigSession(store.Rigs);
            await bench.OpenAsync((await store.Rigs.AddAsync($"bench {session}", text)).Id);
            benches.Add(bench);
        }

        await MeasureAsync(table, "bench", length, (session, label) =>
        {
            var bench = benches[session];
            var loads = bench.Rig!.Loads.Items;
            return bench.EditAsync("label", bench.Rig with { Loads = new ValueList<Load>(loads.SetItem(0, loads[0] with { Label = NameplateReader.Read(label) })) });
        });
        var told = benches.Count(static bench => bench is not { Trouble: null, Theirs: null, IsExamining: false });
        foreach (var bench in benches)
            bench.Dispose();
        benches.Clear();

        await using var host = HostFor(store);
        var pages = new List<(AsyncServiceScope Scope, HeadlessRenderer Renderer)>();
        for (var session = 0; session < Sessions; session++)
        {
            var id = (await store.Rigs.AddAsync($"page {session}", text)).Id;
            var scope = host.Services.CreateAsyncScope();
            var renderer = new HeadlessRenderer(scope.ServiceProvider, NullLoggerFactory.Instance);
            await renderer.ShowAsync<LayoutView>(ParameterView.FromDictionary(new Dictionary<string, object?>
            {
                [nameof(LayoutView.Layout)] = typeof(PageLayout),
                [nameof(LayoutView.ChildContent)] = (RenderFragment)(builder =>
                {
                    builder.OpenComponent<RigPage>(0);
                    builder.AddComponentParameter(1, nameof(RigPage.Id), id);
                    builder.AddComponentParameter(2, nameof(RigPage.Part), "gear");
                    builder.CloseComponent();
                }),
            }));
            pages.Add((scope, renderer));
        }

        await MeasureAsync(table, "page", length, (session, label) => pages[session].Renderer.ChangeAsync($"Label of {load}", label));
        var faults = pages.SelectMany(static page => page.Renderer.Faults).ToList();
        table.Add("sessions that were told of trouble or a fault", $"{told + faults.Count}", "", "", "", "", "", "");
        foreach (var page in pages)
        {
            await page.Renderer.CloseAsync();
            await page.Scope.DisposeAsync();
        }

        table.Write("sessions.md");
        if (faults.Count > 0)
            throw new AggregateException(faults);
    }

    private static async Task MeasureAsync(ResultTable table, string what, TimeSpan length, Func<int, string, Task> edit)
    {
        await Task.WhenAll(Enumerable.Range(0, Sessions).Select(session => edit(session, "9V DC 11mA")));
        var before = Memory();
        var clock = Stopwatch.StartNew();
        var sessions = await Task.WhenAll(Enumerable.Range(0, Sessions).Select(session => Task.Run(async () =>
        {
            var took = new List<double>();
            await Task.Delay(Pause * session / Sessions); // not all in the same moment
            for (var number = 0; clock.Elapsed < length; number++)
            {
                var one = Stopwatch.StartNew();
                await edit(session, $"9V DC {12 + (number % 80)}mA");
                took.Add(one.Elapsed.TotalMilliseconds);
                await Task.Delay(Pause);
            }

            return took;
        })));
        var all = sessions.SelectMany(static one => one).Order().ToList();
        var after = Memory();
        table.Add(what, $"{all.Count}", At(0.5), At(0.95), At(1), $"{before:F1} MB", $"{after:F1} MB", $"{Environment.WorkingSet / 1e6:F0} MB");

        string At(double share) => $"{all[(int)(share * (all.Count - 1))]:F1} ms";
    }

    private static double Memory()
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        return GC.GetTotalMemory(forceFullCollection: true) / 1e6;
    }

    /// <summary>The services of the program's own host, with a browser that is not there.</summary>
    private static WebApplication HostFor(Store store)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.Services.AddPage(store, new StoreOpening(), new PageLimits());
        builder.Services.AddScoped<IJSRuntime, HeadlessBrowser>();
        builder.Services.AddScoped<NavigationManager, HeadlessBrowser.Address>();
        return builder.Build();
    }
}
