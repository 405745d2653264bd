using Loadmark.Workshop.DataFolders;

namespace Loadmark.Workshop.Tests.DataFolders;

/// <summary>Where rigs and gear are kept.</summary>
public sealed class DataFolderTests
{
    [Theory]
    [InlineData("asked", "set", "asked")]
    [InlineData(null, "set", "set")]
    [InlineData("", "set", "set")]
    public void Rigs_are_kept_where_one_says(string? asked, string set, string expected) =>
        Assert.Equal(Path.GetFullPath(expected), DataFolder.From(asked, name => name == "LOADMARK_DATA" ? set : null));

    [Fact]
    public void Rigs_are_kept_in_the_users_own_data_where_nobody_says() =>
        Assert.EndsWith("loadmark", DataFolder.From(null, static _ => null), StringComparison.Ordinal);
}
