using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.Texts;

namespace Loadmark.Core.Checks;

/// <summary>
/// Says a rig's verdict in a sentence or two that name the thing: what stands against it, or why it is safe, from the check's own figures.
/// What a severity means in general is in <see cref="SeverityText"/>.
/// </summary>
public static class VerdictSentence
{
    /// <summary>The verdict on a rig, in words.</summary>
    /// <param name="check">What the rules say of it.</param>
    public static string Of(CheckResult check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Verdict switch
        {
            Severity.Harm => Name("Do not plug in", check),
            Severity.Fails => Name("Something here will not run", check),
            Severity.Unsure => Name("Find out first", check),
            Severity.Noise => Name("May hum or whine", check),
            Severity.Margin => Name("Something to see to", check),
            Severity.Note or Severity.Good => Safe(check),
            var verdict => verdict.Sentence(),
        };
    }

    /// <summary>The finding that decides, in its own words, and how many more there are of its severity.</summary>
    private static string Name(string lead, CheckResult check)
    {
        var decides = check.Findings[0];
        var more = check.Findings.Items.Count(finding => finding.Severity == decides.Severity) - 1;
        var message = decides.Message;
        if (!decides.Subjects.Items.Any(subject => message.StartsWith(subject, StringComparison.Ordinal)))
            message = SentenceCase.Small(message);
        return $"{lead}: {message}{more switch { 0 => "", 1 => " And one more.", _ => $" And {more} more." }}";
    }

    private static string Safe(CheckResult check)
    {
        // A yes that could not even compare the volts would be none.
        var fits = check.Fitting;
        if (!fits.Contains(FittingFigures.Volts))
            return check.Verdict.Sentence() + NotTold(check);

        var list = Phrases.List(fits);
        var text = $"Safe to plug in. {SentenceCase.Capital(list)} fit"
            + (fits.Contains(FittingFigures.Current) && Tightest(check) is { } tightest ? $"; {tightest}." : ".");
        if (check.TakenForGranted.Count > 0)
            text += $" Taken from practice, look once: {Phrases.List(check.TakenForGranted)}.";
        return text + NotTold(check);
    }

    /// <summary>
    /// What is asked of the limit that is nearest to being reached, with its name where there are several; null for none.
    /// </summary>
    private static string? Tightest(CheckResult check)
    {
        var limits = check.Outlets.Items
            .Where(static outlet => outlet is { Loads.Count: > 0, Run: not null, Limit.Value: > 0 })
            .Select(static outlet => (
                Name: $"{outlet.Outlet}", Share: outlet.Run!.Value.Value / outlet.Limit!.Value.Value,
                Text: $"{FigureDisplay.Printed(outlet.Run)} of {FigureDisplay.Printed(outlet.Limit)}"))
            .Concat(check.Totals.Items.Where(static total => total.IsWhole && Amount(total.Limit) > 0).Select(static total => (
                Name: total.Holder, Share: Amount(total.Run) / Amount(total.Limit), Text: $"{total.Run} of {total.Limit}")))
            .OrderByDescending(static limit => limit.Share)
            .ToList();
        return limits switch
        {
            [] => null,
            [var only] => only.Text,
            [var first, ..] => $"the fullest is {first.Name}, {first.Text}",
        };
    }

    private static decimal Amount(SupplyTotal total) => total.Watts?.Value ?? total.Amps?.Value ?? 0;

    /// <summary>What the rules did not check: the mains side by name, since it could be anything, the rest by number.</summary>
    private static string NotTold(CheckResult check)
    {
        List<string> mains =
        [
            .. check.Untold.Items.Where(static untold => untold.Rule == RuleId.MainsMismatch).SelectMany(static untold => untold.Subjects)
                .Concat(check.Findings.Items.Where(static finding => finding.Rule == RuleId.MainsMismatch)
                    .SelectMany(static finding => finding.Subjects))
                .Distinct(StringComparer.Ordinal),
        ];
        var others = check.Untold.Items.Count(static untold => untold.Rule != RuleId.MainsMismatch);
        return (mains.Count > 0 ? $" Not checked: the mains side of {Phrases.List(mains)}." : "")
            + others switch { 0 => "", 1 => " One thing could not be told.", _ => $" {others} things could not be told." };
    }
}
