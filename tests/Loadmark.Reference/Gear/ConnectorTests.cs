using Loadmark.Core.Gear;
using Loadmark.Reference.Figures;

namespace Loadmark.Reference.Gear;

/// <summary>The two coaxial plugs the program knows by name, against IEC 60130-10 type A as it was read in part.</summary>
[Trait("Source", "IEC 60130-10:1971 type A, read in part")]
public sealed class ConnectorTests
{
    public static IEnumerable<TheoryDataRow<string, Plug>> Plugs() =>
    [
        new("type A, 2.1", Plug.Common) { TestDisplayName = "5.5x2.1 [IEC 60130-10:1971 type A, read in part]" },
        new("type A, 2.5", Plug.WidePin) { TestDisplayName = "5.5x2.5 [IEC 60130-10:1971 type A, read in part]" },
    ];

    [Theory]
    [MemberData(nameof(Plugs))]
    public void Plug_has_the_sizes_of_the_standard(string type, Plug plug)
    {
        var row = ReferenceTable.Row("connectors", "type", type);
        Assert.True(row.WasRead);
        Assert.Equal($"{row["plug_outer_mm"]}x{row["pin_mm"]}", plug.Name);
    }
}
