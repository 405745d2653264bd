using Loadmark.Core.Gear;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The outlet's plug does not go into the load.</summary>
internal sealed class PlugMismatch : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.PlugMismatch;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Fails;

    /// <inheritdoc/>
    public override string Source => "IEC 60130-10 (coaxial connectors: 5.5 mm outside, pins of 2.1 mm and 2.5 mm)";

    protected override void Judge(NameplateCase subject, Report report)
    {
        foreach (var (feed, _, fits) in subject.Feeds)
        {
            var plug = feed.Plug;
            for (var place = 0; place < feed.Loads.Length; place++)
            {
                if (fits[place] is not { Plug: PlugFit.None, PlugIsKnown: true })
                    continue;

                var load = feed.Loads[place];
                var jack = load.Rating.Plug;
                report.Add(
                    this,
                    Phrases.Subjects(load, feed),
                    $"{(feed.Lead?.Plug is null ? feed.OutletNames : $"The lead {feed.Lead.Id}")} ends in a plug of {plug}; "
                    + $"{load.Id} takes {jack}.",
                    $"{plug.Value} ≠ {jack.Value}",
                    $"Use a lead or adaptor that ends in {jack.Value}, see that it keeps the polarity, "
                    + "and list it under 'leads' with its plug.");
            }
        }
    }
}
