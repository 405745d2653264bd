using Xunit.Sdk;

namespace Loadmark.Reference.Figures;

/// <summary>The rule of tolerance itself: were it too wide, every check that leans on it would pass.</summary>
public sealed class PrintedTests
{
    [Theory]
    [InlineData("2.35", "2.355")]
    [InlineData("2.35", "2.345")]
    [InlineData("60.8", "60.75")]
    [InlineData("1.263e-05", "1.2634e-05")]
    [InlineData("0.1", "0.102")]
    public void Agrees_with_what_rounds_to_it(string printed, string computed) =>
        Printed.Agrees(Number(printed), Number(computed), "this test");

    [Theory]
    [InlineData("2.35", "2.3551")]
    [InlineData("2.350", "2.3506")]
    [InlineData("60.8", "60.74")]
    [InlineData("1.263e-05", "1.2636e-05")]
    [InlineData("0.1", "0.1021")]
    [InlineData("108", "109")]
    public void Disagrees_with_what_does_not(string printed, string computed) =>
        Assert.Throws<TrueException>(() => Printed.Agrees(Number(printed), Number(computed), "this test"));

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.NumberStyles.Float);
}
