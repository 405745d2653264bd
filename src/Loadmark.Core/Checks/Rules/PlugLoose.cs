using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The plug goes in but is bored wider than the load's pin, so that it holds badly.</summary>
internal sealed class PlugLoose : Rule
{
    /// <inheritdoc/>
    public override string Name => "plug-loose";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Margin;

    /// <inheritdoc/>
    public override string Source => "IEC 60130-10 (pins of 2.1 mm and 2.5 mm in the same 5.5 mm outside)";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var feed in rig.Feeds)
        {
            var plug = feed.Plug;
            foreach (var load in feed.Loads)
            {
                var jack = load.Rating.Plug;
                if (PlugFitting.Judge(plug.Value, jack.Value) != PlugFit.Loose)
                    continue;

                report.Add(
                    this,
                    Words.Subjects(load, feed),
                    $"The plug of {(feed.Lead?.Plug is null ? feed.OutletNames : $"the lead {feed.Lead.Id}")} ({plug}) sits loose on the pin of {load.Id} ({jack}): it may lose contact when the board is moved.",
                    "bore 2.5 mm > pin 2.1 mm",
                    $"Use a lead that ends in {jack.Value}, and list it under 'leads' with its plug.");
            }
        }
    }
}
