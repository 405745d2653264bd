using Loadmark.Core.Rigs;

namespace Loadmark.Planning.Tests;

/// <summary>What changes against the present wiring, load by load.</summary>
public sealed class LoadMoveTests
{
    private const string Gear = """
        rig: Moves
        loads: { A: { label: 9 V 20 mA }, B: { label: 9 V 20 mA }, C: { label: 9 V 20 mA } }
        supplies: { s: { isolated: true, outlets: { 1: 9 V 100 mA; 12 V 80 mA, 2-3: 9 V 100 mA } } }
        leads: { chain: { type: daisy chain } }
        """;

    [Theory]
    [InlineData("{ from: s/2, to: A }", "{ from: s/2, to: A }", "")]
    [InlineData("{ from: s/2, at: 9 V, to: A }", "{ from: s/2, to: A }", "")]
    [InlineData("{ from: s/2, to: A }", "{ from: s/3, to: A }", "A s/2>s/3")]
    [InlineData("{ from: s/1, at: 9 V, to: A }", "{ from: s/1, at: 12 V, to: A }", "A s/1>s/1")]
    [InlineData("{ from: s/2, to: A }", "{ from: s/2, lead: chain, to: [A, B] }", "A s/2>s/2, B >s/2")]
    [InlineData("{ from: s/2, lead: chain, to: [A, B] }", "{ from: s/2, lead: chain, to: [A, C] }", "B s/2>, C >s/2")]
    [InlineData("{ from: s/2, to: A }, { from: s/3, to: A }", "{ from: s/3, to: A }", "A s/2+s/3>s/3")]
    public void Loads_that_are_fed_otherwise_are_listed(string before, string after, string moves)
    {
        var found = LoadMove.Between(Wired(before), Wired(after));
        Assert.Equal(moves, string.Join(", ", found.Items.Select(static move =>
            $"{move.Load} {string.Join('+', move.Before.Items.Select(static feed => feed.From[0]))}>{(move.After is { } then ? then.From[0].ToString() : "")}")));
    }

    private static Rig Wired(string feeds) => Rigs.Read($"{Gear}\nwired: [{feeds}]\n");
}
