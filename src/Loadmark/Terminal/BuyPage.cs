using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Planning.Buying;
using Loadmark.Planning;

namespace Loadmark.Terminal;

/// <summary>What to buy: the cheapest with its wiring, then the options worth choosing between.</summary>
internal static class BuyPage
{
    private const int Indent = 2;
    private const int PriceEnd = 14;
    private const int MassEnd = 23;
    private const int SpareEnd = 31;
    private const int TightEnd = 38;
    private const int NoiseEnd = 45;
    private const int BuyColumn = 48;

    /// <summary>Writes the page.</summary>
    /// <param name="sheet">The page.</param>
    /// <param name="result">What was found.</param>
    /// <param name="all">Whether every option is shown with its wiring, not only the cheapest.</param>
    public static void Write(Sheet sheet, BuyResult result, bool all)
    {
        sheet.Put("BUY  ", SheetStyle.Strong).Wrap(result.Rig.Name, sheet.Column, SheetStyle.Strong).EndLine();
        sheet.PadTo(Indent).Wrap(Verdict(result), Indent).EndLine();
        if (result.ReservedLoads.Count > 0)
        {
            var reserved = result.Rig.Loads.Items.Where(load => result.ReservedLoads.Items.Contains(load.Id))
                .Select(static load => $"{load.Id} ({load.Label})");
            sheet.PadTo(Indent).Wrap($"Room is kept for {string.Join(", ", reserved)}.", Indent).EndLine();
        }

        if (result.Cheapest is { } cheapest)
        {
            sheet.BlankLine().Line("The cheapest", SheetStyle.Strong);
            WriteOption(sheet, cheapest);
            WriteFront(sheet, result, all);
        }
        else
        {
            WriteImpossible(sheet, result);
        }

        WriteLeftOut(sheet, result);
        sheet.BlankLine();
        Cautions.Write(sheet);
    }

    private static string Verdict(BuyResult result) => result.Status switch
    {
        BuyStatus.Optimal when result.Cheapest is { Purchases.Count: 0 } =>
            "Nothing need be bought: the supplies there are feed every load.",
        BuyStatus.Optimal => "Every load can be fed, and nothing cheaper on the list can do it: proven, as far as the list tells.",
        BuyStatus.Feasible =>
            $"Every load can be fed. Whether it can be done for less was not proven in the time{Below(result, "it cannot")}.",
        BuyStatus.Infeasible => "Nothing on the list feeds every load: proven, as far as the list tells.",
        _ => $"Nothing that feeds every load was found in the time{Below(result, "there is nothing")}.",
    };

    private static string Below(BuyResult result, string what) =>
        result.PriceBound > 0 ? $"; for less than {FigureDisplay.Price(result.PriceBound)} {what}" : "";

    private static void WriteOption(Sheet sheet, BuyOption option)
    {
        foreach (var (offer, count) in option.Purchases)
        {
            var each = count == 1 ? "" : $"(each {FigureDisplay.Price(offer.Price)})";
            sheet.PadTo(Indent).Put($"{count} x ").Put(offer.Id, SheetStyle.Strong).PutRight(FigureDisplay.Price(offer.Price * count), 30)
                .Put(count == 1 ? "" : " ").Wrap(each, sheet.Column).EndLine();
        }

        sheet.PadTo(Indent).Wrap(
            $"Price {FigureDisplay.Price(option.Price)}, mass {MassText(option)}, {option.Spare} to spare. Judged by the rules: "
            + $"{SeverityLook.Of(option.Verdict).Word}.",
            Indent).EndLine();
        if (option.LeadWords is { } leads)
            sheet.PadTo(Indent).Wrap($"Its wiring needs leads that are to buy: {leads}.", Indent, SheetStyle.Orange).EndLine();
        if (option.MayBeUnregulated.Count > 0)
            sheet.PadTo(Indent).Wrap($"May be unregulated: {string.Join(", ", option.MayBeUnregulated)}.", Indent, SheetStyle.Orange)
                .EndLine();
        sheet.BlankLine();
        FeedLines.Write(sheet, option.Plan, Indent);
        if (option.Plan.Unfed.Count > 0)
            sheet.PadTo(Indent)
                .Wrap(
                    "A wiring for everything exists but was not found in the time; without a feed here: "
                    + $"{string.Join(", ", option.Plan.Unfed)}.",
                    Indent,
                    SheetStyle.Orange).EndLine();
        sheet.PadTo(Indent).Wrap(Quality(option), Indent, SheetStyle.Faint).EndLine();
    }

    private static string Quality(BuyOption option)
    {
        var plan = option.Plan;
        var quiet = option.IsWiredForQuiet ? "quiet " : "";
        var proven = plan.Status == PlanStatus.Optimal
            ? $"No {quiet}wiring of it is better: proven."
            : $"Whether a better {quiet}wiring of it exists was not proven in the time.";
        return $"Limits past their headroom: {Count(plan, RuleId.ThinHeadroom)}; findings of noise: {Noise(plan)}. {proven}";
    }

    private static void WriteFront(Sheet sheet, BuyResult result, bool all)
    {
        var options = result.Options;
        if (options.Count > 1)
        {
            sheet.BlankLine().Line("Worth choosing between", SheetStyle.Strong);
            sheet.PutRight("price", PriceEnd, SheetStyle.Faint).PutRight("mass", MassEnd, SheetStyle.Faint)
                .PutRight("spare", SpareEnd, SheetStyle.Faint)
                .PutRight("tight", TightEnd, SheetStyle.Faint).PutRight("noise", NoiseEnd, SheetStyle.Faint).PadTo(BuyColumn)
                .Put("buy", SheetStyle.Faint).EndLine();
            for (var index = 0; index < options.Count; index++)
                WriteRow(sheet, index + 1, options[index]);
            var none = options.Items.Any(static option => option.Leads.Count > 0)
                ? "nothing can be left out of any"
                : "in none can a supply be left out";
            sheet.PadTo(Indent).Wrap(
                $"Each is lighter than every cheaper one by 100 g, or has 5 W more to spare; {none}, "
                + "and none costs more than one and a half times the cheapest. Tight: limits past their headroom. Noise: "
                + $"findings of noise.{(options.Count > result.Front.Count ? " Of the cheapest that is quiet this need not hold." : "")}",
                Indent, SheetStyle.Faint).EndLine();
        }

        foreach (var line in Firsts(result))
            sheet.PadTo(Indent).Wrap(line, Indent).EndLine();
        if (!result.IsFrontComplete)
            sheet.PadTo(Indent)
                .Wrap("The time did not suffice to prove that there are no others worth choosing.", Indent, SheetStyle.Orange).EndLine();
        if (options.Count < 2)
            return;
        if (!all)
        {
            sheet.PadTo(Indent).Wrap("With --all each is shown with its wiring.", Indent, SheetStyle.Faint).EndLine();
            return;
        }

        for (var index = 1; index < options.Count; index++)
        {
            sheet.BlankLine().Line($"Option {index + 1}", SheetStyle.Strong);
            WriteOption(sheet, options[index]);
        }
    }

    /// <summary>The options that stand out, and how far that is proven.</summary>
    private static IEnumerable<string> Firsts(BuyResult result)
    {
        yield return $"Cheapest: 1 ({(result.Status == BuyStatus.Optimal ? "of all, proven" : "of those found")}).";
        yield return result.QuietStatus switch
        {
            BuyStatus.Optimal => $"Cheapest that is quiet: {NumberOf(result.CheapestQuiet!)} (of all, proven).",
            BuyStatus.Feasible => $"Cheapest that is quiet: {NumberOf(result.CheapestQuiet!)} (of those found).",
            BuyStatus.Infeasible => "No combination on the list is quiet: proven, as far as the list tells.",
            _ => "None that is quiet was found in the time.",
        };
        yield return $"Fewest boxes of these: {NumberOf(result.FewestBoxes!)}.";
        if (result.Lightest is { } lightest)
            yield return $"Lightest of these: {NumberOf(lightest)}.";

        int NumberOf(BuyOption option) => result.Options.Items.IndexOf(option) + 1;
    }

    private static void WriteRow(Sheet sheet, int number, BuyOption option)
    {
        sheet.PutRight($"{number}", Indent + 2).PutRight(FigureDisplay.Price(option.Price), PriceEnd).PutRight(MassText(option), MassEnd)
            .PutRight($"{option.Spare}", SpareEnd)
            .PutRight($"{Count(option.Plan, RuleId.ThinHeadroom)}", TightEnd).PutRight($"{Noise(option.Plan)}", NoiseEnd).PadTo(BuyColumn);
        var buy = string.Join(
            ", ", option.Purchases.Items.Select(static purchase => $"{purchase.Count} x {purchase.Offer.Id}".Replace(' ', '\u00A0')));
        var mark = option.MayBeUnregulated.Count > 0 ? ", may be unregulated" : "";
        sheet.Wrap(buy.Length == 0 ? "nothing" : buy, BuyColumn, SheetStyle.Strong).Put(" ")
            .Wrap($"({SeverityLook.Of(option.Verdict).Word}{mark})", BuyColumn, SheetStyle.Faint).EndLine();
    }

    private static void WriteImpossible(Sheet sheet, BuyResult result)
    {
        sheet.BlankLine().Line("What stands in the way", SheetStyle.Strong);
        if (result.Unsuited.Count > 0)
            sheet.PadTo(Indent)
                .Wrap(
                    $"No supply on the list, and none there is, gives these what they need: {string.Join(", ", result.Unsuited)}.",
                    Indent).EndLine();
        if (result.NeedLeads.Count > 0)
            sheet.PadTo(Indent)
                .Wrap(
                    "Fed only over reversing, series or parallel leads, of which there may be too few: "
                    + $"{string.Join(", ", result.NeedLeads)}.",
                    Indent).EndLine();
        if (result.Unsuited.Count == 0 && result.NeedLeads.Count == 0)
            sheet.PadTo(Indent).Wrap("Each load alone could be fed; what they need together was not found.", Indent).EndLine();
    }

    private static void WriteLeftOut(Sheet sheet, BuyResult result)
    {
        if (result.LeftOut.Count == 0)
            return;
        sheet.BlankLine().Line("Left out of the choice", SheetStyle.Faint);
        foreach (var reason in result.LeftOut.Items.GroupBy(
            static left => left.Because.Replace(left.Offer.Id, "*", StringComparison.Ordinal), StringComparer.Ordinal))
        {
            var names = string.Join(", ", reason.Select(static left => left.Offer.Id));
            sheet.PadTo(Indent).Wrap($"{names}: {reason.First().Because}", Indent, SheetStyle.Faint).EndLine();
        }
    }

    private static int Count(PlanResult plan, RuleId rule) => plan.Check.Findings.Items.Count(finding => finding.Rule == rule);

    private static int Noise(PlanResult plan) => plan.Check.Findings.Items.Count(static finding => finding.Severity == Severity.Noise);

    private static string MassText(BuyOption option) => option.MassGrams is { } grams ? FigureDisplay.Mass(grams) : "unknown";
}
