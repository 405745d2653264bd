using System.Globalization;
using System.Net;
using System.Text.Json;

namespace Loadmark.Tests.Http;

/// <summary>A price list that somebody else made, over HTTP: refused with the place, or answered with what it says and nothing done by it.</summary>
public sealed class HostilePricesTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private const string Rig = "rig: Board\nmains: 230 V 50 Hz\nloads:\n  drive-1: 9V DC 12mA centre negative 5.5x2.1\n  delay-2: 9V DC 300mA centre negative 5.5x2.1\nsupplies: {}\n";
    private const string Header = "supply,price,outlets\n";
    private const string Outlets = "1-4: 9 V 500 mA centre negative 5.5x2.1\n";

    private RunningHost Host => shared.Host;

    [Theory]
    [InlineData(2, 8, Header + "twin-1,=1+1," + Outlets)]
    [InlineData(2, 8, Header + "twin-1,-1," + Outlets)]
    [InlineData(2, 8, Header + "twin-1,1000000000," + Outlets)]
    [InlineData(2, 8, Header + "twin-1,2\u200B0," + Outlets)]
    [InlineData(2, 1, Header + "=cmd|' /C calc'!A0,20," + Outlets)]
    [InlineData(2, 1, Header + "../x,20," + Outlets)]
    [InlineData(2, 1, Header + "<script>alert(1)</script>,20," + Outlets)]
    [InlineData(2, 3, Header + "tw\0in,20," + Outlets)]
    [InlineData(1, 14, "supply,price,price,outlets\ntwin-1,20,20," + Outlets)]
    [InlineData(1, 1, "supply\u202E,price,outlets\ntwin-1,20," + Outlets)]
    public async Task What_no_list_can_have_is_refused_where_it_stands(int line, int column, string prices)
    {
        var problem = await RunningHost.ProblemOfAsync(await BuyAsync(prices), 422, "unreadable");
        shared.Shapes.AssertFits("Problem", problem.GetRawText());
        var error = problem.GetProperty("priceErrors")[0];
        Assert.Equal((line, column), (error.GetProperty("line").GetInt32(), error.GetProperty("column").GetInt32()));
        Assert.Empty(problem.GetProperty("errors").EnumerateArray());
    }

    [Theory]
    [InlineData("1-4")]
    [InlineData("..")]
    [InlineData("=cmd|calc!A0")]
    [InlineData("twin\u202E1")]
    [InlineData("twin\u200B1")]
    [InlineData("<b>twin")]
    public async Task An_id_is_text_whatever_it_looks_like(string id)
    {
        using var answer = await BuyAsync($"{Header}{id},20,{Outlets}");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        using var told = JsonDocument.Parse(await answer.Content.ReadAsStringAsync(RunningHost.Stop));
        Assert.Equal(id, told.RootElement.GetProperty("options")[0].GetProperty("buy")[0].GetProperty("supply").GetString());
    }

    [Theory]
    [InlineData("supply,price,label\na,1,\"", "9;", 480_000)]
    [InlineData(Header + "", "a", 1_000_000)]
    [InlineData(Header + "a,1,\"", "x: 9 V 1 mA|", 80_000)]
    [InlineData(Header, "a,1,1: 9 V 1 mA\n", 60_000)]
    public async Task A_list_as_large_as_one_may_be_is_refused(string before, string piece, int times)
    {
        var problem = await RunningHost.ProblemOfAsync(await BuyAsync(before + string.Concat(Enumerable.Repeat(piece, times))), 422, "unreadable");
        Assert.InRange(problem.GetProperty("priceErrors").GetArrayLength(), 1, 51);
        Assert.InRange(problem.GetRawText().Length, 1, 40_000);
    }

    /// <summary>
    /// Every offer is compared with every other before any clock is looked at: the longest list that is taken must be one that is done with by
    /// the time limit, which a busy machine may need.
    /// </summary>
    [Fact]
    public async Task The_longest_list_that_is_taken_is_answered()
    {
        var offers = Enumerable.Range(1, 2000).Select(static place => string.Create(CultureInfo.InvariantCulture, $"twin-{place},{10 + (place / 10)}.{place % 100:00},1: 9 V {300 + (place * 3)} mA centre negative\n"));
        using var answer = await BuyAsync(Header + string.Concat(offers));
        Assert.Contains(answer.StatusCode, (HttpStatusCode[])[HttpStatusCode.OK, HttpStatusCode.GatewayTimeout]);
    }

    private async Task<HttpResponseMessage> BuyAsync(string prices) =>
        await Host.PostAsync("/api/buy", JsonSerializer.Serialize(new { rig = Rig, prices }), "application/json");
}
