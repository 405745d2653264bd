using CsCheck;
using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.Tests.Checks.Properties;

/// <summary>What must hold of any rig whatever.</summary>
public sealed class RigProperties
{
    private static readonly int Rigs = Rounds.Of(2_000);

    [Fact]
    public void A_check_answers_and_answers_the_same_again() => WiredRigGen.Rig().Sample(
        rig => Assert.Equal(NameplateCheck.Of(rig), NameplateCheck.Of(rig)), iter: Rigs);

    [Fact]
    public void Every_finding_names_subjects_that_the_rig_has() => WiredRigGen.Rig().Sample(
        rig =>
        {
            var known = Known(rig);
            var result = NameplateCheck.Of(rig);
            Assert.All(result.Findings, finding => AssertNames(finding.Subjects, known, finding.Rule));
            Assert.All(result.Untold, untold => AssertNames(untold.Subjects, known, untold.Rule));
        },
        iter: Rigs);

    [Fact]
    public void The_verdict_is_the_worst_finding_and_findings_come_worst_first() => WiredRigGen.Rig().Sample(
        rig =>
        {
            var result = NameplateCheck.Of(rig);
            var severities = result.Findings.Select(finding => finding.Severity).ToList();
            Assert.Equal(severities.OrderDescending(), severities);
            var isOpen = (rig.Wired ?? []).Count == 0;
            Assert.Equal(severities.Append(isOpen ? Severity.Open : Severity.Good).Max(), result.Verdict);
            Assert.Equal(result.Verdict is Severity.Harm or Severity.Fails or Severity.Open, result.IsRefused);
            Assert.DoesNotContain(Severity.Open, severities);
        },
        iter: Rigs);

    /// <summary>
    /// Every outlet's setting is stated: where it is not, the program takes the mode that suits the loads on it, and one
    /// more load may well make it choose another, better one.
    /// </summary>
    [Fact]
    public void One_more_load_never_makes_a_rig_pass() => Gen.Select(WiredRigGen.Rig(statesSettings: true), WiredRigGen.Load("NEW"), Gen.Int[0, 9]).Sample(
        (rig, load, place) =>
        {
            var feeds = rig.Wired?.Items.ToArray() ?? [];
            if (place < feeds.Length)
                feeds[place] = feeds[place] with { To = [.. feeds[place].To, load.Id] };
            var more = rig with { Loads = [.. rig.Loads, load], Wired = rig.Wired is null ? null : (ValueList<Feed>?)[.. feeds] };

            var before = NameplateCheck.Of(rig);
            var after = NameplateCheck.Of(more);

            Assert.True(after.Verdict >= before.Verdict || !before.IsRefused);
            Assert.Subset(Refusals(after), Refusals(before));
        },
        iter: Rigs);

    [Fact]
    public void Exchanging_two_equal_outlets_changes_nothing_but_their_names() => Gen.Select(WiredRigGen.Rig(), Gen.Int[0, 99], Gen.Int[0, 99]).Sample(
        (rig, one, other) =>
        {
            var supply = rig.Supplies[one % rig.Supplies.Count];
            var outlets = supply.Outlets.Items.ToArray();
            var (from, to) = (one % outlets.Length, other % outlets.Length);
            outlets[to] = outlets[from] with { Id = outlets[to].Id };
            var equal = rig with { Supplies = [.. rig.Supplies.Items.Select(each => each == supply ? supply with { Outlets = [.. outlets] } : each)] };

            // The copied outlet may lack the setting that a feed asked of the one it replaces.
            equal = equal with { Wired = equal.Wired is { } feeds ? (ValueList<Feed>?)[.. feeds.Items.Select(feed => feed with { At = [] })] : null };
            var names = new Dictionary<string, string>(StringComparer.Ordinal)
            {
                [$"{supply.Id}/{outlets[from].Id}"] = $"{supply.Id}/{outlets[to].Id}",
                [$"{supply.Id}/{outlets[to].Id}"] = $"{supply.Id}/{outlets[from].Id}",
            };
            var exchanged = equal with { Wired = equal.Wired is { } wired ? (ValueList<Feed>?)[.. wired.Items.Select(feed => Exchange(feed, names))] : null };

            Assert.Equal(Essence(NameplateCheck.Of(equal), names), Essence(NameplateCheck.Of(exchanged), []));
        },
        iter: Rigs);

    [Fact]
    public void More_headroom_never_removes_a_finding_of_thin_headroom() => Gen.Select(WiredRigGen.Rig(), Gen.Int[0, 60], Gen.Int[0, 39]).Sample(
        (rig, headroom, more) =>
        {
            HashSet<string> Thin(int percent) =>
                [.. NameplateCheck.Of(rig with { Headroom = percent / 100m }).Findings.Where(finding => finding.Rule == "thin-headroom").Select(finding => $"{finding.Subjects}")];
            Assert.Subset(Thin(headroom + more), Thin(headroom));
        },
        iter: Rigs);

    /// <summary>Without kinds, since the figures of a class do not grow with the rest; a source's resistance shrinks, to keep its voltage.</summary>
    [Fact]
    public void Twice_all_currents_and_limits_breaks_the_same_rules() => WiredRigGen.Rig().Sample(
        rig =>
        {
            var plain = rig with { Loads = [.. rig.Loads.Items.Select(load => load with { Kind = null })] };
            Assert.Equal(
                NameplateCheck.Of(plain).Findings.Select(finding => $"{finding.Rule}: {finding.Subjects}"),
                NameplateCheck.Of(Twice(plain)).Findings.Select(finding => $"{finding.Rule}: {finding.Subjects}"));
        },
        iter: Rigs);

    private static HashSet<string> Known(Rig rig) =>
    [
        .. rig.Loads.Items.Select(load => load.Id),
        .. rig.Leads.Items.Select(lead => lead.Id),
        .. rig.Supplies.Items.Select(supply => supply.Id),
        .. rig.Supplies.Items.SelectMany(supply => supply.Outlets.Items.Select(outlet => $"{supply.Id}/{outlet.Id}")),
    ];

    private static void AssertNames(ValueList<string> subjects, HashSet<string> known, string rule)
    {
        Assert.NotEmpty(subjects);
        Assert.All(subjects, subject => Assert.True(known.Contains(subject), $"{rule} names '{subject}'"));
        Assert.Equal(subjects.Distinct(StringComparer.Ordinal).Count(), subjects.Count);
    }

    private static SortedSet<string> Refusals(CheckResult result) =>
        [.. result.Findings.Where(finding => finding.Severity >= Severity.Fails).Select(finding => finding.Rule)];

    private static Feed Exchange(Feed feed, Dictionary<string, string> names) => feed with
    {
        From = [.. feed.From.Items.Select(outlet => names.TryGetValue($"{outlet}", out var other) ? outlet with { Outlet = other.Split('/')[1] } : outlet)],
    };

    /// <summary>
    /// All that a result says, without its order, with outlets renamed. Of idle capacity only the loads: which of two
    /// equal free outlets is offered goes by their order in the file.
    /// </summary>
    private static List<string> Essence(CheckResult result, Dictionary<string, string> names)
    {
        string Text(IEnumerable<string> subjects, string rule) => string.Join(
            ", ",
            subjects.Where(subject => rule != "idle-capacity" || !subject.Contains('/', StringComparison.Ordinal))
                .Select(subject => names.GetValueOrDefault(subject, subject)).Order(StringComparer.Ordinal));
        var lines = result.Findings.Select(finding => $"{finding.Severity} {finding.Rule}: {Text(finding.Subjects, finding.Rule)}")
            .Concat(result.Untold.Select(untold => $"untold {untold.Rule}: {Text(untold.Subjects, untold.Rule)}"))
            .Concat(result.Outlets.Select(outlet => $"{names.GetValueOrDefault($"{outlet.Outlet}", $"{outlet.Outlet}")} {outlet with { Outlet = new OutletRef("", "") }}"));
        return [.. lines.Order(StringComparer.Ordinal)];
    }

    private static Rig Twice(Rig rig) => rig with
    {
        Loads = [.. rig.Loads.Items.Select(load => load with { Label = Twice(load.Label), Run = load.Run * 2, Current = load.Current * 2, Watts = load.Watts * 2, Start = Twice(load.Start) })],
        Supplies =
        [
            .. rig.Supplies.Items.Select(supply => supply with
            {
                Label = Twice(supply.Label),
                Total = Twice(supply.Total),
                Banks = [.. supply.Banks.Items.Select(bank => bank with { Total = Twice(bank.Total)! })],
                Outlets = [.. supply.Outlets.Items.Select(outlet => outlet with { Label = Twice(outlet.Label)!, Surge = Twice(outlet.Surge), SourceOhms = outlet.SourceOhms / 2 })],
            }),
        ],
    };

    private static TimedCurrent? Twice(TimedCurrent? current) => current is { } one ? one with { Current = one.Current * 2 } : null;

    private static SupplyTotal? Twice(SupplyTotal? total) => total is null ? null : new SupplyTotal(total.Amps * 2, total.Watts * 2);

    private static Nameplate? Twice(Nameplate? label) => label is null ? null : new Nameplate(label.Text)
    {
        Form = label.Form,
        Polarity = label.Polarity,
        Plug = label.Plug,
        Ground = label.Ground,
        Isolated = label.Isolated,
        Regulated = label.Regulated,
        NotUnderstood = label.NotUnderstood,
        Mains = label.Mains,
        PrintsVoltAmps = label.PrintsVoltAmps,
        HoldsCharge = label.HoldsCharge,
        EachOutlet = label.EachOutlet,
        Conflicts = label.Conflicts,
        Unread = label.Unread,
        AmbiguousVolts = label.AmbiguousVolts,
        AmbiguousAmps = label.AmbiguousAmps is { State: FieldState.Ambiguous } amps
            ? Field<Amps>.Ambiguous([.. amps.Candidates.Select(static candidate => candidate * 2)], amps.Place)
            : label.AmbiguousAmps,
        Input = label.Input is { } input ? input with { Amps = input.Amps * 2, Watts = input.Watts * 2, VoltAmps = input.VoltAmps * 2 } : null,
        Total = Twice(label.Total),
        Modes = [.. label.Modes.Select(Twice)],
        Outlets = [.. label.Outlets.Select(static group => group with { Modes = [.. group.Modes.Select(Twice)] })],
    };

    private static Mode Twice(Mode mode) => mode with
    {
        Amps = mode.Amps is { } amps ? amps with { Value = amps.Value * 2 } : null,
        Watts = mode.Watts is { } watts ? watts with { Value = watts.Value * 2 } : null,
        VoltAmps = mode.VoltAmps is { } apparent ? apparent with { Value = apparent.Value * 2 } : null,
    };
}
