using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>
/// How the rig is plugged, load by load. Any wiring can be entered here, an unsafe one too; the rules say what comes of it.
/// </summary>
public sealed partial class PluggedRows : ComponentBase
{
    /// <summary>
    /// The value of the choice that stands for the joined outlets that a load is on; no outlet is called so, for it has no slash.
    /// </summary>
    private const string Joined = "joined";

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private static string ValueOf(Feed? feed) => feed switch
    {
        null => "",
        { From: [var outlet] } => outlet.ToString(),
        _ => Joined,
    };

    private Feed? FeedOf(string load) => (View.Rig.Wired ?? []).Items.FirstOrDefault(feed => feed.To.Items.Contains(load));

    /// <summary>The worst of what is said of a load, where it has to be looked at before anything is switched on.</summary>
    private Finding? Worst(string load) =>
        View.Check.Findings.Items.Where(finding => finding.Severity >= Severity.Unsure && finding.Subjects.Items.Contains(load))
            .MaxBy(static finding => finding.Severity);

    private Task PlugAsync(string load, ChangeEventArgs change)
    {
        var chosen = change.Value as string ?? "";
        if (chosen.Length == 0)
            return View.Session.EditAsync(T["unplugging {0}", load], View.Rig.Unplug(load));
        return View.Check.Outlets.Items.FirstOrDefault(outlet => outlet.Outlet.ToString() == chosen)?.Outlet is { } outlet
            ? View.Session.EditAsync(T["plugging {0} onto {1}", load, outlet], View.Rig.PlugAsItIs(outlet, load))
            : Task.CompletedTask;
    }
}
