using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Core.Trials;
using Loadmark.Drawing.Texts;
using Loadmark.Web.Texts;
using Loadmark.Web.Views;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Parts;

/// <summary>Wiring by hand, with the rules beside every choice.</summary>
public sealed partial class WirePanel : ComponentBase
{
    private string _first = "";
    private string _second = "";
    private string _load = "";
    private Joint _joint = Joint.Series;
    private string? _joinFault;
    private Finding? _joinSays;

    /// <summary>The rig's page.</summary>
    [Parameter, EditorRequired] public RigView View { get; set; } = null!;

    [Inject] private IStringLocalizer<PageText> T { get; set; } = null!;

    private RenderFragment Outlets => builder =>
    {
        builder.OpenElement(0, "option");
        builder.AddAttribute(1, "value", "");
        builder.AddContent(2, T["choose"]);
        builder.CloseElement();
        foreach (var outlet in View.Check.Outlets)
        {
            builder.OpenElement(3, "option");
            builder.AddAttribute(4, "value", outlet.Outlet.ToString());
            builder.AddContent(5, SafeText.Clean(outlet.Outlet.ToString()));
            builder.CloseElement();
        }
    };

    /// <summary>Where a load is plugged in now, in words; null where it is not.</summary>
    private string? Now(string load) =>
        (View.Rig.Wired ?? []).Items.FirstOrDefault(feed => feed.To.Items.Contains(load)) is { } feed
            ? string.Join(" + ", feed.From)
            : null;

    private OutletRef? Find(string? name) => View.Check.Outlets.Items.FirstOrDefault(outlet => outlet.Outlet.ToString() == name)?.Outlet;

    private void PickAsync(ChangeEventArgs change)
    {
        var outlet = Find(change.Value as string);
        if (outlet != View.Picked)
            View.Pick(outlet ?? View.Picked);
    }

    private async Task PlugAsync(Connection connection)
    {
        View.Light();
        await View.PlugAsync(connection.Load);
    }

    /// <summary>The voltages that a feed's outlet can be set to.</summary>
    private List<Volts> Settings(Feed feed)
    {
        var settings = OutletRating.Of(View.Rig, feed.From[0]).Settings.ToList();
        if (feed.SettingOf(0) is { } set && !settings.Contains(set))
            settings.Add(set);
        return settings;
    }

    private Task SetAsync(int index, Feed feed, List<Volts> settings, ChangeEventArgs change)
    {
        var volts = settings.Find(one => one.ToString() == change.Value as string);
        return View.Session.EditAsync(T["setting {0} to {1}", feed.From[0], volts], View.Rig.Replace(index, feed with { At = [volts] }));
    }

    private Task LeadAsync(int index, Feed feed, ChangeEventArgs change)
    {
        var lead = change.Value as string is { Length: > 0 } id ? id : null;
        return View.Session.EditAsync(T["changing the lead of {0}", feed.From[0]], View.Rig.Replace(index, feed with { Lead = lead }));
    }

    private Task PinAsync(int index, Feed feed, ChangeEventArgs change) =>
        View.Session.EditAsync(
            T[change.Value is true ? "keeping {0} when planning" : "let {0} be planned", feed.From[0]],
            View.Rig.Replace(index, feed with { Pinned = change.Value is true }));

    private Task UnplugAsync(string load) => View.Session.EditAsync(T["unplugging {0}", load], View.Rig.Unplug(load));

    private Task ClearAsync() =>
        View.Session.EditAsync(
            T["unplugging everything"], View.Rig with { Wired = [.. View.Rig.Wired!.Value.Items.Where(static feed => feed.Pinned)] });

    private async Task JoinAsync()
    {
        (_joinFault, _joinSays) = (null, null);
        if (Find(_first) is not { } first || Find(_second) is not { } second || first == second
            || !View.Rig.EveryLoad.Any(load => load.Id == _load))
        {
            _joinFault = T["Choose two outlets and a load."];
            return;
        }

        var rest = View.Rig.Unplug(_load);
        var type = _joint == Joint.Series ? LeadType.Series : LeadType.Parallel;
        var lead = rest.Leads.Items.FirstOrDefault(lead => lead.Type == type && rest.HasFree(lead));
        var joined = rest.Plug(new Feed { From = [first, second], Joined = _joint, Lead = lead?.Id, To = [_load] });
        await View.Session.EditAsync(T["joining {0} and {1} for {2}", first, second, _load], joined);

        // Entered all the same: somebody may have found it joined like this.
        _joinSays = View.Rig != joined ? null : View.Check.Findings.Items.FirstOrDefault(
            finding => finding.Severity >= Severity.Fails
                && finding.Subjects.Items.Any(subject => subject == _load || subject == _first || subject == _second));
    }
}
