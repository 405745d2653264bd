using System.Text;

namespace Loadmark.Files.Tests;

public sealed class RigFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("rig-files-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("FFFE720069006700", "UTF-16: save it as UTF-8")]
    [InlineData("FEFF007200690067", "UTF-16: save it as UTF-8")]
    [InlineData("FFFE000072000000", "UTF-32: save it as UTF-8")]
    [InlineData("0000FEFF00000072", "UTF-32: save it as UTF-8")]
    [InlineData("7200690067003A00", "UTF-16: save it as UTF-8")]
    [InlineData("0072006900670000", "UTF-16: save it as UTF-8")]
    [InlineData("7F454C4602010100FF", "not a text file")]
    [InlineData("726967003A2061", "not a text file")]
    public void Refuses_other_encodings_and_binaries(string hex, string part)
    {
        var error = Assert.Single(ReadBytes(Convert.FromHexString(hex)).Errors);
        Assert.Contains(part, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Points_at_a_byte_that_is_not_UTF_8()
    {
        var error = Assert.Single(ReadBytes([.. "rig: a\n# caf"u8, 0xE9, .. " b\n"u8]).Errors);
        Assert.Equal((2, 6), (error.Line, error.Column));
        Assert.Contains("the byte E9 here is not UTF-8", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Takes_a_byte_order_mark()
    {
        Assert.Equal("é", ReadBytes([0xEF, 0xBB, 0xBF, .. "rig: é"u8]).Rig!.Name);
        Assert.Equal("é", Fixtures.Read("\uFEFFrig: é").Name);
    }

    [Fact]
    public void Takes_a_file_of_the_largest_size_and_refuses_one_byte_more()
    {
        var bytes = Encoding.UTF8.GetBytes("rig: a\n#" + new string('x', RigFileReader.MostBytes - 8));
        Assert.NotNull(ReadBytes(bytes).Rig);
        Assert.Contains("over 1 MiB", Assert.Single(ReadBytes([.. bytes, (byte)'x']).Errors).Message, StringComparison.Ordinal);
        Assert.Contains("over 1 MiB", Assert.Single(RigFileReader.Read(Encoding.UTF8.GetString(bytes) + "xx", "f").Errors).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Tells_of_paths_that_cannot_be_read()
    {
        AssertError(Path.Combine(_folder, "none.yaml"), "no such file");
        AssertError(Path.Combine(_folder, "none", "none.yaml"), "no such file");
        AssertError(_folder, "a folder, not a file");
        AssertError("", "no file is named");
        AssertError("a\0b", "cannot be read");
    }

    [Fact]
    public void Tells_of_a_file_without_permission()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "permissions work otherwise there");
        var path = Write("x.yaml", "rig: a");
        SetMode(path, UnixFileMode.None);
        SetMode(_folder, ReadOnlyFolder);
        using var user = OrdinaryUser.Become();
        AssertError(path, "permission is denied");
    }

    [Fact]
    public void Saves_whole_over_an_old_file_and_keeps_its_permissions()
    {
        var path = Write("x.yaml", "rig: old");
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupWrite);
        RigFile.Save(path, "rig: né\n");
        Assert.Equal("rig: né\n"u8.ToArray(), File.ReadAllBytes(path));
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupWrite, File.GetUnixFileMode(path));
        Assert.Single(Directory.GetFileSystemEntries(_folder));
    }

    [Fact]
    public void Saves_a_new_file_beside_what_a_killed_save_left()
    {
        Write($".x.yaml.{Environment.ProcessId}-0.tmp", "half");
        RigFile.Save(Path.Combine(_folder, "x.yaml"), "rig: a\n");
        Assert.Equal("rig: a\n", File.ReadAllText(Path.Combine(_folder, "x.yaml")));
    }

    [Fact]
    public void Follows_a_link()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need a privilege there");
        var path = Write("x.yaml", "rig: old");
        var link = Path.Combine(_folder, "link.yaml");
        File.CreateSymbolicLink(link, path);
        RigFile.Save(link, "rig: new");
        Assert.Equal("rig: new", File.ReadAllText(path));
        Assert.NotNull(new FileInfo(link).LinkTarget);
    }

    [Fact]
    public void Leaves_nothing_behind_where_it_cannot_save()
    {
        var taken = Directory.CreateDirectory(Path.Combine(_folder, "taken")).FullName;
        Write(Path.Combine("taken", "inside"), "x");
        Assert.ThrowsAny<Exception>(() => RigFile.Save(taken, "rig: a"));
        Assert.Equal([taken], Directory.GetFileSystemEntries(_folder));
        Assert.ThrowsAny<IOException>(() => RigFile.Save(Path.Combine(_folder, "none", "x.yaml"), "rig: a"));
    }

    [Fact]
    public void Keeps_a_write_protected_file()
    {
        var path = Write("x.yaml", "rig: old");
        new FileInfo(path).IsReadOnly = true;
        Assert.SkipUnless(File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly), "write protection does not bind this user");
        Assert.Throws<UnauthorizedAccessException>(() => RigFile.Save(path, "rig: new"));
        Assert.Equal("rig: old", File.ReadAllText(path));
        new FileInfo(path).IsReadOnly = false;
    }

    [Fact]
    public void Keeps_the_old_file_in_a_read_only_folder()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "permissions work otherwise there");
        var path = Write("x.yaml", "rig: old");
        SetMode(_folder, ReadOnlyFolder);
        try
        {
            using var user = OrdinaryUser.Become();
            Assert.Throws<UnauthorizedAccessException>(() => RigFile.Save(path, "rig: new"));
            Assert.Equal("rig: old", File.ReadAllText(path));
        }
        finally
        {
            SetMode(_folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    private const UnixFileMode ReadOnlyFolder = UnixFileMode.UserRead | UnixFileMode.UserExecute | UnixFileMode.GroupRead
        | UnixFileMode.GroupExecute | UnixFileMode.OtherRead | UnixFileMode.OtherExecute;

    private static void AssertError(string path, string part)
    {
        var reading = RigFileReader.ReadFileWithText(path).Reading;
        Assert.Null(reading.Rig);
        Assert.Contains(part, Assert.Single(reading.Errors).Message, StringComparison.Ordinal);
    }

    private static void SetMode(string path, UnixFileMode mode)
    {
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(path, mode);
    }

    private string Write(string name, string text)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    private RigFileResult ReadBytes(byte[] bytes)
    {
        var path = Path.Combine(_folder, "bytes.yaml");
        File.WriteAllBytes(path, bytes);
        return RigFileReader.ReadFileWithText(path).Reading;
    }
}
