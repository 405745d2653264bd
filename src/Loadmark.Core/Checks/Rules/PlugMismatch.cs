using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The outlet's plug does not go into the load.</summary>
internal sealed class PlugMismatch : Rule
{
    /// <inheritdoc/>
    public override string Name => "plug-mismatch";

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => "IEC 60130-10 (coaxial connectors: 5.5 mm outside, pins of 2.1 mm and 2.5 mm)";

    internal override void Judge(WiredRig rig, Budgets budgets, Report report)
    {
        foreach (var feed in rig.Feeds)
        {
            var plug = feed.Plug;
            foreach (var load in feed.Loads)
            {
                var jack = load.Rating.Plug;
                if (PlugFitting.Judge(plug.Value, jack.Value) != PlugFit.None)
                    continue;

                report.Add(
                    this,
                    Words.Subjects(load, feed),
                    $"{(feed.Lead?.Plug is null ? feed.OutletNames : $"The lead {feed.Lead.Id}")} ends in a plug of {plug}; {load.Id} takes {jack}.",
                    $"{plug.Value} ≠ {jack.Value}",
                    $"Use a lead or adaptor that ends in {jack.Value}, see that it keeps the polarity, and list it under 'leads' with its plug.");
            }
        }
    }
}
