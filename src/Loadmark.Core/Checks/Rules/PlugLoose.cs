using Loadmark.Core.Gear;

namespace Loadmark.Core.Checks.Rules;

/// <summary>The plug goes in but is bored wider than the load's pin, so that it holds badly.</summary>
internal sealed class PlugLoose : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.PlugLoose;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Margin;

    /// <inheritdoc/>
    public override string Source => "IEC 60130-10 (pins of 2.1 mm and 2.5 mm in the same 5.5 mm outside)";

    protected override void Judge(NameplateCase subject, Report report)
    {
        foreach (var (feed, _, fits) in subject.Feeds)
        {
            var plug = feed.Plug;
            for (var place = 0; place < feed.Loads.Length; place++)
            {
                if (fits[place] is not { Plug: PlugFit.Loose, PlugIsKnown: true })
                    continue;

                var load = feed.Loads[place];
                var jack = load.Rating.Plug;
                report.Add(
                    this,
                    Phrases.Subjects(load, feed),
                    $"The plug of {(feed.Lead?.Plug is null ? feed.OutletNames : $"the lead {feed.Lead.Id}")} ({plug}) sits loose on the "
                    + $"pin of {load.Id} ({jack}): it may lose contact when the board is moved.",
                    "bore 2.5 mm > pin 2.1 mm",
                    $"Use a lead that ends in {jack.Value}, and list it under 'leads' with its plug.");
            }
        }
    }
}
