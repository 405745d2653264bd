using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

public sealed class PrintedOutletsTests
{
    private static readonly Place Here = new(0, 4);

    [Theory]
    [InlineData("2-5", 4, "2 3 4 5")]
    [InlineData("01-03", 3, "01 02 03")]
    [InlineData("1,3", 2, "1 3")]
    [InlineData("1,3-5", 4, "1 3 4 5")]
    [InlineData("7", 1, "7")]
    [InlineData("A-C", 3, "A B C")]
    [InlineData("B", 1, "B")]
    [InlineData(null, 3, "9 10 11")]
    public void Names_each_outlet(string? ids, int count, string names) =>
        Assert.Equal(names, string.Join(' ', new PrintedOutlets(ids, count, [], Here).Names(9)));

    [Fact]
    public void Groups_are_equal_by_what_they_say()
    {
        var mode = new Mode(QuantityRange<Volt>.Single(new Volts(9m)), null, null);
        var first = new PrintedOutlets("1-2", 2, [mode], Here) { Polarity = Field<Polarity>.Ambiguous([Polarity.CentreNegative, Polarity.CentrePositive], Here) };
        var same = new PrintedOutlets("1-2", 2, [mode], Here) { Polarity = Field<Polarity>.Ambiguous([Polarity.CentreNegative, Polarity.CentrePositive], Here) };

        Assert.Equal(first, same);
        Assert.Equal(first.GetHashCode(), same.GetHashCode());
        Assert.NotEqual(first, same with { Modes = [mode, mode] });
        Assert.NotEqual(first, same with { Isolated = Field<bool>.Read(true, Here) });
    }

    [Fact]
    public void An_outlet_of_a_group_gets_a_label_of_its_own()
    {
        var mode = new Mode(QuantityRange<Volt>.Single(new Volts(9m)), new Figure<Amps>(new Amps(0.12m), Origin.Stated), null);
        var group = new PrintedOutlets("1-3", 3, [mode], Here) { Polarity = Field<Polarity>.Read(Polarity.CentrePositive, Here) };
        var label = new Nameplate("any")
        {
            Form = Field<SupplyForm>.Read(SupplyForm.Direct, Here),
            Polarity = Field<Polarity>.Read(Polarity.CentreNegative, Here),
            Isolated = Field<bool>.Read(true, Here),
            Outlets = [group],
            NotUnderstood = LabelTopics.Plug | LabelTopics.Polarity,
        };

        Assert.Equal("9V DC 0.12A, centre positive, isolated, plug?", NameplateWriter.Write(group, label));
    }
}
