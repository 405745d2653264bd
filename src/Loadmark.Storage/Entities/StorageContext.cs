using Microsoft.EntityFrameworkCore;

namespace Loadmark.Storage.Entities;

/// <summary>The tables, free of what is particular to one database.</summary>
internal sealed class StorageContext(DbContextOptions<StorageContext> options) : DbContext(options)
{
    public DbSet<RigRow> Rigs => Set<RigRow>();

    public DbSet<EditRow> Edits => Set<EditRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<RigRow>(rig =>
        {
            rig.ToTable("Rigs");
            rig.HasKey(row => row.Id);
            rig.Property(row => row.Id).ValueGeneratedNever().HasColumnOrder(0);
            rig.Property(row => row.Name).HasColumnOrder(1);
            rig.Property(row => row.Revision).HasColumnOrder(2);
            rig.Property(row => row.Present).HasColumnOrder(3);
            rig.Property(row => row.Changed).HasColumnOrder(4);
            rig.Property(row => row.Removed).HasColumnOrder(5);
            rig.Property(row => row.Text).HasColumnOrder(6);
            rig.HasIndex(row => row.Changed);
        });

        modelBuilder.Entity<EditRow>(edit =>
        {
            edit.ToTable("Edits");
            edit.HasKey(row => new { row.RigId, row.Number });
            edit.Property(row => row.Number).ValueGeneratedNever();
            edit.HasOne<RigRow>().WithMany().HasForeignKey(row => row.RigId).OnDelete(DeleteBehavior.Cascade);
        });
    }
}
