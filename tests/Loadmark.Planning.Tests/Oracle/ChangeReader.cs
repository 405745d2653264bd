using System.Globalization;
using System.Text.RegularExpressions;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests.Oracle;

/// <summary>Makes a proposed change as whoever reads it would: from its words alone.</summary>
internal static partial class ChangeReader
{
    /// <summary>The rig with the change made; null where the words are not understood.</summary>
    public static Rig? Make(Rig rig, string change)
    {
        if (LeadText().Match(change) is { Success: true } lead)
            return rig with { Leads = [.. rig.Leads, LeadOf(lead)] };
        if (OffText().Match(change) is { Success: true } off)
            return rig with { Loads = [.. rig.Loads.Items.Where(load => load.Id != off.Groups["load"].Value)] };
        if (OutletsText().Match(change) is not { Success: true } more)
            return null;

        var plates = more.Groups["plates"].Value.Split("; ");
        var outlets = plates.Select(static (plate, index) => new Outlet { Id = $"{index + 1}", Label = NameplateReader.Read(plate.Replace("a.c.", "AC", StringComparison.Ordinal).Replace("d.c.", "DC", StringComparison.Ordinal)) });
        return rig with { Supplies = [.. rig.Supplies, new Supply { Id = "bought", Isolated = true, Outlets = [.. outlets] }] };
    }

    private static Lead LeadOf(Match match) => new()
    {
        Id = "bought",
        Type = match.Groups["type"].Value switch
        {
            "daisy chain" => LeadType.DaisyChain,
            "series lead" => LeadType.Series,
            "parallel lead" => LeadType.Parallel,
            _ => LeadType.Reversing,
        },
        Plugs = match.Groups["plugs"].Success ? int.Parse(match.Groups["plugs"].Value, CultureInfo.InvariantCulture) : null,
    };

    [GeneratedRegex("^one more (?<type>daisy chain|reversing lead|series lead|parallel lead)(?: with (?<plugs>[0-9]+) plugs)?(?:, so that .*)?$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex LeadText();

    [GeneratedRegex("^take (?<load>\\S+) off$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex OffText();

    [GeneratedRegex("^(?:one more outlet of|[0-9]+ more outlets:) (?<plates>.*)$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex OutletsText();
}
