using Loadmark.Workshop.Sessions;

namespace Loadmark.Workshop.Tests.Sessions;

/// <summary>Ids that nothing has yet.</summary>
public sealed class FreeIdsTests
{
    [Theory]
    [InlineData("drive-3", "drive-4", "drive-3")]
    [InlineData("drive-3", "drive-5", "drive-3 drive-4")]
    [InlineData("drive-9", "drive-10", "drive-9")]
    [InlineData("brick", "brick 2", "brick")]
    [InlineData("brick", "brick 3", "brick,brick 2")]
    [InlineData("7", "8", "7")]
    [InlineData("T1234567890", "T1234567890 2", "T1234567890")]
    public void A_free_id_counts_on(string id, string expected, string taken) =>
        Assert.Equal(expected, FreeIds.Like(id, taken.Split(taken.Contains(',', StringComparison.Ordinal) ? ',' : ' ')));
}
