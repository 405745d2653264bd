namespace Loadmark.Planning.Tests.Oracle.Fleet;

/// <summary>The sorts of supply of an invented hire workshop.</summary>
internal static class SupplyCatalogue
{
    private const string Brick = "label: \"INPUT 100-240V~ 50/60Hz 0.8A\"";

    /// <summary>Units with several outlets.</summary>
    public static IReadOnlyList<SupplyType> Units { get; } =
    [
        new(Brick, [.. OutletType.Of(4, 9, 150), .. OutletType.Switched(1, 500, 400, 250)]) { IsIsolated = true, TotalMilliwatts = 9_500, Weight = 5 },
        new(Brick, [.. OutletType.Of(6, 9, 100), .. OutletType.Switched(2, 500, 400, 250)]) { IsIsolated = true, TotalMilliwatts = 14_000, Weight = 6 },
        new(Brick, [.. OutletType.Of(6, 9, 150), .. OutletType.Switched(2, 500, 400, 250), .. OutletType.Of(2, 9, 300)]) { IsIsolated = true, TotalMilliwatts = 21_000, Weight = 5 },
        new(Brick, [.. OutletType.Of(8, 9, 100), .. OutletType.Switched(4, 500, 350, 200)]) { IsIsolated = true, TotalMilliamps = 2_400, Weight = 4 },
        new(Brick, [.. OutletType.Of(5, 9, 250), .. Enumerable.Repeat(new OutletType((9, 18, 200)), 2)]) { IsIsolated = true, TotalMilliamps = 1_500, Weight = 3 },
        new(Brick, [.. Enumerable.Repeat(OutletType.Of(9, 500) with { More = ", surge: 700 mA for 1 s" }, 6)]) { IsIsolated = true, TotalMilliwatts = 24_000, Weight = 3 },
        new(Brick + "\n    isolated: false", [.. OutletType.Of(6, 9, 200)]) { TotalMilliamps = 900, Weight = 3 },
        new(Brick + "\n    isolated: false", [.. OutletType.Of(5, 9, 300), .. OutletType.Of(1, 12, 300), .. OutletType.Of(2, 18, 100)]) { TotalMilliwatts = 15_000, Weight = 2 },
        new(Brick + "\n    banks: { A: { total: 500 mA }, B: { total: 500 mA } }", [.. OutletType.Of(8, 9, 200)]) { BankMilliamps = 500, TotalMilliamps = 900, Weight = 1 },
    ];

    /// <summary>Adaptors with one outlet, for what no unit suits and for chains.</summary>
    public static IReadOnlyList<SupplyType> Adaptors { get; } =
    [
        Adaptor("INPUT 100-240V~ 50/60Hz 0.5A", OutletType.Of(9, 1_700)),
        Adaptor("INPUT 100-240V~ 50/60Hz 0.3A", OutletType.Of(9, 600)),
        Adaptor("INPUT 230V~ 50Hz 0.1A", OutletType.Of(9, 300) with { More = ", source_ohms: 2 Ω" }, "\n    regulated: false"),
        Adaptor("INPUT 100-240V~ 50/60Hz 0.5A", OutletType.Of(12, 1_000)),
        Adaptor("INPUT 100-240V~ 50/60Hz 0.5A", OutletType.Of(12, 1_000) with { HasWidePlug = true }),
        Adaptor("INPUT 100-240V~ 50/60Hz 0.3A", OutletType.Of(15, 500)),
        Adaptor("INPUT 100-240V~ 50/60Hz 0.4A", OutletType.Of(18, 500)),
        Adaptor("INPUT 230V~ 50Hz 0.1A", OutletType.Of(9, 1_000) with { IsAlternating = true }),
    ];

    private static SupplyType Adaptor(string input, OutletType outlet, string more = "") => new($"label: \"{input}\"" + more, outlet) { Weight = 1 };
}
