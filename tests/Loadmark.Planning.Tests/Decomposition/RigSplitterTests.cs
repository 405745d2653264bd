using System.Collections.Immutable;
using Loadmark.Planning.Problem;
using Loadmark.Planning.Decomposition;

namespace Loadmark.Planning.Tests.Decomposition;

/// <summary>What keeps a rig together, and what does not.</summary>
public sealed class RigSplitterTests
{
    private const string Loads = """
        rig: Two sorts
        loads:
          A1: { label: 9 V DC 20 mA centre negative }
          A2: { label: 9 V DC 20 mA centre negative }
          B1: { label: 18 V DC 20 mA centre negative }
          B2: { label: 18 V DC 20 mA centre negative }
        supplies:
          S1: { outlets: { 1: 9 V DC 100 mA centre negative } }
          S2: { outlets: { 1: 18 V DC 100 mA centre negative } }

        """;

    [Fact]
    public void Loads_and_supplies_that_do_not_suit_one_another_are_parts_of_their_own()
    {
        var parts = Split(Loads);
        Assert.Equal(["A1 A2 / S1", "B1 B2 / S2"], parts.Select(Describe).Order(StringComparer.Ordinal));
        Assert.All(parts, static part => Assert.Equal(2, part.Loads));
    }

    [Theory]
    [InlineData("{ type: daisy chain, plugs: 2 }", 1)]
    [InlineData("{ type: daisy chain, plugs: 2, count: 2 }", 2)]
    [InlineData("{ type: parallel }", 2)] // No supply has two outlets.
    [InlineData("{ type: reversing }", 2)] // Nothing here wants one.
    [InlineData("{ type: series }", 2)] // 9 V and 18 V are 27 V, which nothing takes.
    public void A_lead_that_several_parts_want_keeps_them_together_unless_there_are_enough(string lead, int expected)
    {
        var parts = Split(Loads + $"leads:\n  extra: {lead}\n");
        Assert.Equal(expected, parts.Length);
    }

    /// <summary>With the chain used twice both parts would be fed.</summary>
    [Fact]
    public void A_lead_is_used_once()
    {
        var plan = Rigs.Plan(Loads + "leads:\n  extra: { type: daisy chain, plugs: 2 }\n");
        Assert.Single(plan.Unfed);
        Assert.Equal(1, plan.Objective[0].Bound);
        PlanAssert.IsSafe(plan);
        Assert.Empty(Rigs.Plan(Loads + "leads:\n  extra: { type: daisy chain, plugs: 2, count: 2 }\n").Unfed);
    }

    /// <summary>Three chains for two parts: each gets one, of which the second part's is another lead.</summary>
    [Fact]
    public void Each_part_gets_as_many_leads_as_it_could_use()
    {
        var parts = Split(Loads + "leads:\n  one: { type: daisy chain, plugs: 2 }\n  other: { type: daisy chain, plugs: 2, count: 2 }\n");
        Assert.Equal(["one 1", "other 1"], parts.Select(static part => string.Join(' ', part.Rig.Leads.Items.Select(static lead => $"{lead.Id} {lead.Count}"))));
        var plan = Rigs.Plan(Loads + "leads:\n  one: { type: daisy chain, plugs: 2 }\n  other: { type: daisy chain, plugs: 2, count: 2 }\n");
        Assert.Equal(["one", "other"], plan.Rig.Wired!.Value.Items.Select(static feed => feed.Lead));
        Assert.Equal(PlanStatus.Optimal, plan.Status);
    }

    /// <summary>A chain that one part alone could use, because the other has one load, splits nothing.</summary>
    [Fact]
    public void A_lead_of_use_in_one_part_only_keeps_nothing_together()
    {
        const string text = "rig: Two\nloads:\n  A1: { label: 9 V DC 20 mA centre negative }\n  A2: { label: 9 V DC 20 mA centre negative }\n  B1: { label: 18 V DC 20 mA centre negative }\n"
            + "supplies:\n  S1: { outlets: { 1: 9 V DC 100 mA centre negative } }\n  S2: { outlets: { 1: 18 V DC 100 mA centre negative } }\nleads:\n  chain: { type: daisy chain }\n";
        var parts = Split(text);
        Assert.Equal(["B1 / S2", "A1 A2 / S1"], parts.Select(Describe));
        Assert.Equal([0, 1], parts.Select(static part => part.Rig.Leads.Count));
        Assert.Empty(Rigs.Plan(text).Unfed);
    }

    [Fact]
    public void Outlets_that_a_lead_could_join_are_of_one_part()
    {
        const string text = "rig: In line\nloads:\n  A: { label: 9 V DC 20 mA centre negative }\n  B: { label: 18 V DC 20 mA centre negative }\n  C: { label: 27 V DC 20 mA centre negative }\n"
            + "supplies:\n  S1: { outlets: { 1: 9 V DC 100 mA centre negative } }\n  S2: { outlets: { 1: 18 V DC 100 mA centre negative } }\n";
        Assert.Equal(2, Split(text).Length);
        Assert.Single(Split(text + "leads:\n  in line: { type: series }\n"));
    }

    [Fact]
    public void Supplies_that_a_pinned_feed_joins_are_of_one_part()
    {
        const string pinned = "leads:\n  in line: { type: series }\nwired:\n  - { from: [S1/1, S2/1], joined: series, lead: in line, to: C, pinned: true }\n";
        const string text = "rig: In line\nloads:\n  A: { label: 9 V DC 20 mA centre negative }\n  B: { label: 18 V DC 20 mA centre negative }\n  C: { label: 27 V DC 20 mA centre negative }\n"
            + "supplies:\n  S1: { isolated: true, outlets: { 1: 9 V DC 100 mA centre negative, 2: 9 V DC 100 mA centre negative } }\n  S2: { isolated: true, outlets: { 1: 18 V DC 100 mA centre negative, 2: 18 V DC 100 mA centre negative } }\n";
        Assert.Equal(2, Split(text).Length);
        Assert.Single(Split(text + pinned));
    }

    [Fact]
    public void A_load_that_nothing_can_feed_is_in_no_part_and_stays_dark()
    {
        var text = Loads.Replace("supplies:", "  C: { label: 12 V AC 20 mA }\nsupplies:", StringComparison.Ordinal);
        Assert.Equal(4, Split(text).Sum(static part => part.Loads));
        var plan = Rigs.Plan(text);
        Assert.Contains("C", plan.Unfed.Items);
        Assert.Equal(PlanStatus.Infeasible, plan.Status);
        Assert.All(plan.Objective.Items, static level => Assert.True(level.IsProven));
    }

    private static ImmutableArray<RigPart> Split(string text) => new RigSplitter(new PlanProblemBuilder(Rigs.Read(text)).Build(null)).Split();

    private static string Describe(RigPart part) =>
        $"{string.Join(' ', part.Rig.Loads.Items.Select(static load => load.Id))} / {string.Join(' ', part.Rig.Supplies.Items.Select(static supply => supply.Id))}";
}
