using Bunit;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Web.Hosting;
using Loadmark.Web.Views;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.Sessions;
using Loadmark.Workshop.Solves;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;

namespace Loadmark.Web.Tests;

/// <summary>A page's components over rigs that are really kept, in a folder of the test's own.</summary>
public abstract class PageTest : BunitContext
{
    private readonly Store _store;
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-web-").FullName;

    protected PageTest()
    {
        DefaultWaitTimeout = TimeSpan.FromSeconds(30); // the machine may be busy
        _store = new Store(Path.Combine(_folder, "kept"), TimeProvider.System, Files.Library.RigMentions.Of);
        Opening = _store.OpenAsync(Stop).GetAwaiter().GetResult();
        Assert.Null(Opening.Trouble);
        Services.AddPageTexts();
        Services.AddMudBlazorSnackbar();
        Services.AddMudBlazorDialog();
        Services.AddSingleton(_store);
        Services.AddSingleton(Store);
        Services.AddSingleton(_store.Acceptances);
        Cache = new LibraryCache(_store);
        Services.AddSingleton(Cache);
        Services.AddSingleton<LibraryEditor>();
        Services.AddSingleton<AffectedRigs>();
        Services.AddSingleton(Opening);
        Services.AddSingleton(TimeProvider.System);
        Services.AddSingleton(new PageLimits());
        Services.AddSingleton(new Loadmark.Web.RequestIds.PageRequestId(new Loadmark.Web.RequestIds.RequestIdSource(TimeProvider.System)));
        Services.AddSingleton(new SolveGate(2));
        Services.AddScoped<Loadmark.Web.Metering.BenchMeter>();
        var module = JSInterop.SetupModule("./_content/Loadmark.Web/loadmark.js");
        JSInterop.Mode = module.Mode = JSRuntimeMode.Loose;
        module.SetupModule("watchWidth", _ => true);
        module.SetupModule("watchPlot", _ => true);
        module.SetupModule("watchKeys", _ => true);
    }

    protected static CancellationToken Stop => Xunit.TestContext.Current.CancellationToken;

    private protected Store Whole => _store;

    private protected RigStore Store => _store.Rigs;

    private protected LibraryCache Cache { get; }

    private protected StoreOpening Opening { get; }

    /// <summary>Where the rigs are kept.</summary>
    protected string Kept => Path.Combine(_folder, "kept");


    /// <summary>A rig, kept and opened as its page opens it.</summary>
    private protected async Task<RigView> OpenAsync(string text)
    {
        var kept = await Store.AddAsync(Files.RigFileReader.Read(text, "").Rig?.Name ?? "any", text, Stop);
        return await ReopenAsync(kept.Id);
    }

    /// <summary>Another window on a rig that is kept.</summary>
    private protected async Task<RigView> ReopenAsync(Guid id)
    {
        var session = new RigSession(Store, Cache);
        Assert.True(await session.OpenAsync(id));
        return new RigView(session);
    }

    /// <summary>A part of the page, drawn anew whenever the rig changes.</summary>
    private protected IRenderedComponent<PartHost> Show<TPart>(RigView view, params (string Name, object? Value)[] more)
        where TPart : IComponent => Render<PartHost>(host => host.Add(one => one.View, view).Add(one => one.Part, () => builder =>
        {
            builder.OpenComponent(0, typeof(TPart));
            builder.AddComponentParameter(1, "View", view);
            foreach (var (name, value) in more)
                builder.AddComponentParameter(2, name, value);
            builder.CloseComponent();
        }));

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        _store.Dispose();
        if (Directory.Exists(_folder))
            Directory.Delete(_folder, recursive: true);
    }
}
