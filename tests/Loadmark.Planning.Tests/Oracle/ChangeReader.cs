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
        if (OffText().Match(change) is { Success: true } off)
            return rig with { Loads = [.. rig.Loads.Items.Where(load => load.Id != off.Groups["load"].Value)] };
        foreach (var part in PartsOf(change))
        {
            if (LeadText().Match(part) is { Success: true } lead)
                rig = rig with { Leads = [.. rig.Leads, LeadOf(lead, $"bought {rig.Leads.Count}")] };
            else if (OutletsText().Match(part) is { Success: true } more)
                rig = rig with { Supplies = [.. rig.Supplies, new Supply { Id = "bought", Isolated = true, Outlets = [.. OutletsOf(more)] }] };
            else
                return null;
        }

        return rig;
    }

    /// <summary>How many things a change adds; none for a load that is taken off.</summary>
    public static int CountOf(string change) => PartsOf(change).Sum(static part =>
        part.StartsWith("one more", StringComparison.Ordinal) ? 1 : int.TryParse(part.Split(' ')[0], CultureInfo.InvariantCulture, out var count) ? count : 0);

    /// <summary>"2 more reversing leads", "one more outlet of 9 V 300 mA"; who shares over an added lead is said after it.</summary>
    private static string[] PartsOf(string change) => PartEnd().Split(SharingText().Replace(change, ""));

    private static IEnumerable<Outlet> OutletsOf(Match match)
    {
        var plates = match.Groups["plates"].Value.Split("; ").Select(static plate => plate.Split(" × "))
            .SelectMany(static plate => plate is [var count, var text] ? Enumerable.Repeat(text, int.Parse(count, CultureInfo.InvariantCulture)) : plate);
        return plates.Select(static (plate, index) => new Outlet { Id = $"{index + 1}", Label = NameplateReader.Read(plate.Replace("a.c.", "AC", StringComparison.Ordinal).Replace("d.c.", "DC", StringComparison.Ordinal)) });
    }

    private static Lead LeadOf(Match match, string id) => new()
    {
        Id = id,
        Type = match.Groups["type"].Value switch
        {
            "daisy chain" => LeadType.DaisyChain,
            "series lead" => LeadType.Series,
            "parallel lead" => LeadType.Parallel,
            _ => LeadType.Reversing,
        },
        Plugs = match.Groups["plugs"].Success ? int.Parse(match.Groups["plugs"].Value, CultureInfo.InvariantCulture) : null,
        Count = match.Groups["count"].Value is "one" ? null : int.Parse(match.Groups["count"].Value, CultureInfo.InvariantCulture),
    };

    [GeneratedRegex(", so that .*$", RegexOptions.NonBacktracking)]
    private static partial Regex SharingText();

    [GeneratedRegex("(?:, | and )(?=(?:one|[0-9]+) more )", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PartEnd();

    [GeneratedRegex("^(?<count>one|[0-9]+) more (?<type>daisy chain|reversing lead|series lead|parallel lead)s?(?: with (?<plugs>[0-9]+) plugs)?$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex LeadText();

    [GeneratedRegex("^take (?<load>\\S+) off$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex OffText();

    [GeneratedRegex("^(?:one more outlet of|[0-9]+ more outlets:) (?<plates>.*)$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex OutletsText();
}
